package buzzout.build;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

class LinkAheadTest {
    private static final List<Class<?>> COMPILED = List.of(
            Lambdas.class,
            Lambdas.Inner.class,
            Lambdas.Speaker.class,
            Lambdas.Kept.class,
            Lambdas.Every.class,
            Lambdas.None.class);

    private final Map<String, byte[]> linked =
            LinkAhead.linked(COMPILED.stream().map(LinkAheadTest::bytes).toList());

    @Test
    void everyLambdaSaysWhatItSaidBefore() throws Exception {
        assertEquals(Lambdas.results(), said("results"));
        assertTrue(Lambdas.results().size() > 20);
    }

    @Test
    void everyRecordIsEqualToWhatItWasEqualToBeforeAndHasItsHash() throws Exception {
        assertEquals(Lambdas.equalities(), said("equalities"));
        assertEquals(Lambdas.hashes(), said("hashes"));
        assertNotEquals(List.of(), Lambdas.hashes());
    }

    @Test
    void nothingIsLeftToLinkButTheTextOfARecordAndWhatCanBeSerialized() {
        List<String> left = linked.values().stream()
                .flatMap(LinkAheadTest::linkedLate)
                .distinct()
                .sorted()
                .toList();

        assertEquals(List.of("altMetafactory", "toString"), left);
    }

    @Test
    void aLambdaThatCapturesNothingIsMadeOnce() throws Exception {
        Method constant = loaded().getMethod("constant");

        assertSame(constant.invoke(null), constant.invoke(null));
    }

    @Test
    void twiceTheSameClassesGiveTheSameBytes() {
        Map<String, byte[]> again =
                LinkAhead.linked(COMPILED.stream().map(LinkAheadTest::bytes).toList());

        assertEquals(linked.keySet(), again.keySet());
        linked.forEach((name, bytes) -> assertArrayEquals(bytes, again.get(name), name));
    }

    private Object said(String method) throws Exception {
        return loaded().getMethod(method).invoke(null);
    }

    private Class<?> loaded() throws ClassNotFoundException {
        Map<String, byte[]> byName = new HashMap<>();
        linked.forEach((name, bytes) -> byName.put(name.replace('/', '.'), bytes));
        return new ClassLoader(null) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                byte[] bytes = byName.get(name);
                if (bytes == null) {
                    throw new ClassNotFoundException(name);
                }
                return defineClass(name, bytes, 0, bytes.length);
            }
        }.loadClass(Lambdas.class.getName());
    }

    private static Stream<String> linkedLate(byte[] compiled) {
        ClassNode read = new ClassNode();
        new ClassReader(compiled).accept(read, 0);
        return read.methods.stream()
                .flatMap(method -> Stream.of(method.instructions.toArray()))
                .filter(InvokeDynamicInsnNode.class::isInstance)
                .map(InvokeDynamicInsnNode.class::cast)
                .map(call -> call.bsm.getName().equals("bootstrap") ? call.name : call.bsm.getName());
    }

    private static byte[] bytes(Class<?> compiled) {
        String file = "/" + compiled.getName().replace('.', '/') + ".class";
        try (InputStream in = LinkAheadTest.class.getResourceAsStream(file)) {
            return Objects.requireNonNull(in, file).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
