package buzzout.build;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * The class of a lambda or method reference: what it has captured, and the one method of its interface. Arguments and
 * results are adapted as {@link java.lang.invoke.LambdaMetafactory} describes.
 */
final class LambdaClass {
    /** The static method that takes what is captured, and gives the object. */
    static final String MAKER = "of";

    private static final String ONLY = "ONLY";

    private final ClassNode made = new ClassNode();
    private final Type interfaceType;
    private final Type[] captured;
    private final String method;
    /** As the interface has the method, after erasure. */
    private final Type erased;
    /** As it is used here. */
    private final Type used;

    private final Handle body;

    private LambdaClass(ClassNode user, String name, InvokeDynamicInsnNode call) {
        interfaceType = Type.getReturnType(call.desc);
        captured = Type.getArgumentTypes(call.desc);
        method = call.name;
        erased = (Type) call.bsmArgs[0];
        body = (Handle) call.bsmArgs[1];
        used = (Type) call.bsmArgs[2];
        made.version = user.version;
        made.access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        made.name = name;
        made.superName = Type.getInternalName(Object.class);
        made.interfaces = List.of(interfaceType.getInternalName());
    }

    /** Lambdas that can be serialized, or need bridges, come from another factory; there are few. */
    static boolean canMake(InvokeDynamicInsnNode call) {
        return call.bsm.getOwner().equals("java/lang/invoke/LambdaMetafactory")
                && call.bsm.getName().equals("metafactory");
    }

    static ClassNode make(ClassNode user, String name, InvokeDynamicInsnNode call) {
        LambdaClass lambda = new LambdaClass(user, name, call);
        lambda.addFields();
        lambda.addConstructor();
        lambda.addMaker();
        lambda.addMethod();
        return lambda.made;
    }

    private void addFields() {
        for (int i = 0; i < captured.length; i++) {
            made.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), captured[i].getDescriptor(), null, null);
        }
        if (captured.length == 0) {
            int constant = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
            made.visitField(constant, ONLY, interfaceType.getDescriptor(), null, null);
            MethodNode start = method(Opcodes.ACC_STATIC, "<clinit>", "()V");
            create(start);
            start.visitFieldInsn(Opcodes.PUTSTATIC, made.name, ONLY, interfaceType.getDescriptor());
            start.visitInsn(Opcodes.RETURN);
        }
    }

    private static String field(int index) {
        return "captured" + index;
    }

    private void addConstructor() {
        MethodNode code = method(Opcodes.ACC_PRIVATE, "<init>", Type.getMethodDescriptor(Type.VOID_TYPE, captured));
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, made.superName, "<init>", "()V", false);
        int local = 1;
        for (int i = 0; i < captured.length; i++) {
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), local);
            code.visitFieldInsn(Opcodes.PUTFIELD, made.name, field(i), captured[i].getDescriptor());
            local += captured[i].getSize();
        }
        code.visitInsn(Opcodes.RETURN);
    }

    private void addMaker() {
        MethodNode code = method(Opcodes.ACC_STATIC, MAKER, Type.getMethodDescriptor(interfaceType, captured));
        if (captured.length == 0) {
            code.visitFieldInsn(Opcodes.GETSTATIC, made.name, ONLY, interfaceType.getDescriptor());
        } else {
            create(code);
        }
        code.visitInsn(Opcodes.ARETURN);
    }

    /** A new one, of what is captured in the first locals. */
    private void create(MethodNode code) {
        code.visitTypeInsn(Opcodes.NEW, made.name);
        code.visitInsn(Opcodes.DUP);
        int local = 0;
        for (Type each : captured) {
            code.visitVarInsn(each.getOpcode(Opcodes.ILOAD), local);
            local += each.getSize();
        }
        String constructor = Type.getMethodDescriptor(Type.VOID_TYPE, captured);
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, made.name, "<init>", constructor, false);
    }

    private void addMethod() {
        MethodNode code = method(Opcodes.ACC_PUBLIC, method, erased.getDescriptor());
        if (body.getTag() == Opcodes.H_NEWINVOKESPECIAL) {
            code.visitTypeInsn(Opcodes.NEW, body.getOwner());
            code.visitInsn(Opcodes.DUP);
        }
        List<Type> taken = bodyTakes();
        for (int i = 0; i < captured.length; i++) {
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, made.name, field(i), captured[i].getDescriptor());
            Conversion.between(captured[i], taken.get(i)).write(code);
        }
        int local = 1;
        for (int i = 0; i < erased.getArgumentTypes().length; i++) {
            Type given = erased.getArgumentTypes()[i];
            Type seen = used.getArgumentTypes()[i];
            code.visitVarInsn(given.getOpcode(Opcodes.ILOAD), local);
            Conversion.between(given, seen).write(code);
            Conversion.between(seen, taken.get(captured.length + i)).write(code);
            local += given.getSize();
        }
        code.visitMethodInsn(
                instruction(body.getTag()), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
        giveBack(code);
    }

    private List<Type> bodyTakes() {
        List<Type> taken = new ArrayList<>();
        if (body.getTag() != Opcodes.H_INVOKESTATIC && body.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
            taken.add(Type.getObjectType(body.getOwner()));
        }
        taken.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
        return taken;
    }

    /** Of one nest, a private method is called like any other. */
    private int instruction(int tag) {
        return switch (tag) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    }

    private void giveBack(MethodNode code) {
        Type result = body.getTag() == Opcodes.H_NEWINVOKESPECIAL
                ? Type.getObjectType(body.getOwner())
                : Type.getReturnType(body.getDesc());
        Type expected = erased.getReturnType();
        if (expected.equals(Type.VOID_TYPE)) {
            if (result.getSize() > 0) {
                code.visitInsn(result.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
            }
        } else {
            Conversion.between(result, expected).write(code);
        }
        code.visitInsn(expected.getOpcode(Opcodes.IRETURN));
    }

    private MethodNode method(int access, String name, String descriptor) {
        return (MethodNode) made.visitMethod(access, name, descriptor, null, null);
    }
}
