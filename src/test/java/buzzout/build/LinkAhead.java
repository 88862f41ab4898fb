package buzzout.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Links what a program otherwise links while it starts: for each lambda, and for the equality of each kind of record, Java
 * makes a class when it first comes to it, which takes ten times as long as loading one that is there. The jar is made of
 * classes that went through here; the unit tests run on those that the compiler wrote.
 */
public final class LinkAhead {
    private final Map<String, ClassNode> classes = new TreeMap<>();
    private final List<ClassNode> added = new ArrayList<>();

    private LinkAhead() {}

    /** Copies a folder of classes and resources to another, which is made anew. */
    public static void main(String[] folders) throws IOException {
        Path from = Path.of(folders[0]);
        Path to = Path.of(folders[1]);
        LinkAhead linked = new LinkAhead();
        remove(to);
        for (Path file : files(from)) {
            Path copy = to.resolve(from.relativize(file));
            if (Files.isDirectory(file)) {
                Files.createDirectories(copy);
            } else if (file.toString().endsWith(".class")) {
                linked.add(Files.readAllBytes(file));
            } else {
                Files.copy(file, copy);
            }
        }
        linked.link().forEach((name, bytes) -> write(to.resolve(name + ".class"), bytes));
    }

    /** The same classes linked, and those that this takes besides, by their names. All of a nest have to be among them. */
    static Map<String, byte[]> linked(List<byte[]> compiled) {
        LinkAhead linked = new LinkAhead();
        compiled.forEach(linked::add);
        return linked.link();
    }

    private void add(byte[] compiled) {
        ClassNode read = new ClassNode();
        new ClassReader(compiled).accept(read, 0);
        classes.put(read.name, read);
    }

    private Map<String, byte[]> link() {
        for (ClassNode each : classes.values()) {
            int lambdas = 0;
            for (MethodNode method : each.methods) {
                method.localVariables = null; // their names only a debugger asks for
                for (AbstractInsnNode instruction : method.instructions.toArray()) {
                    if (!(instruction instanceof InvokeDynamicInsnNode call)) {
                        continue;
                    }
                    if (RecordMethods.canMake(call)) {
                        RecordMethods.make(each, method, call);
                    } else if (LambdaClass.canMake(call)) {
                        ClassNode lambda = LambdaClass.make(each, each.name + "$Lambda" + ++lambdas, call);
                        settle(lambda, each);
                        method.instructions.set(
                                call,
                                new MethodInsnNode(Opcodes.INVOKESTATIC, lambda.name, LambdaClass.MAKER, call.desc));
                    }
                }
            }
        }
        Map<String, byte[]> written = new TreeMap<>();
        classes.values().forEach(each -> written.put(each.name, bytes(each)));
        added.forEach(each -> written.put(each.name, bytes(each)));
        return written;
    }

    /** It must be of the same nest, for a lambda's body is private. */
    private void settle(ClassNode lambda, ClassNode user) {
        ClassNode host = classes.getOrDefault(user.nestHostClass == null ? user.name : user.nestHostClass, user);
        lambda.nestHostClass = host.name;
        if (host.nestMembers == null) {
            host.nestMembers = new ArrayList<>();
        }
        host.nestMembers.add(lambda.name);
        added.add(lambda);
    }

    private static byte[] bytes(ClassNode node) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        node.accept(writer);
        return writer.toByteArray();
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> all = new ArrayList<>(files(folder));
            all.sort(Comparator.reverseOrder());
            for (Path each : all) {
                Files.delete(each);
            }
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.sorted().toList();
        }
    }
}
