package buzzout.build;

import java.util.Objects;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * A record's {@code equals} and {@code hashCode}, to the same results as {@link java.lang.runtime.ObjectMethods}, hashes
 * included. {@code toString} is asked for too seldom.
 */
final class RecordMethods {
    private static final int FIRST_COMPONENT = 2;

    private final String owner;
    private final MethodNode code;
    private final Object[] arguments;

    private RecordMethods(ClassNode owner, MethodNode method, InvokeDynamicInsnNode call) {
        this.owner = owner.name;
        this.code = method;
        this.arguments = call.bsmArgs;
    }

    static boolean canMake(InvokeDynamicInsnNode call) {
        return call.bsm.getOwner().equals("java/lang/runtime/ObjectMethods") && !call.name.equals("toString");
    }

    /** Replaces the whole method: it is nothing but this call. */
    static void make(ClassNode owner, MethodNode method, InvokeDynamicInsnNode call) {
        method.instructions.clear();
        RecordMethods methods = new RecordMethods(owner, method, call);
        if (call.name.equals("equals")) {
            methods.addEquals();
        } else {
            methods.addHashCode();
        }
    }

    private void addHashCode() {
        code.visitInsn(Opcodes.ICONST_0);
        for (int i = FIRST_COMPONENT; i < arguments.length; i++) {
            Handle component = (Handle) arguments[i];
            Type type = Type.getType(component.getDesc());
            code.visitIntInsn(Opcodes.BIPUSH, 31);
            code.visitInsn(Opcodes.IMUL);
            code.visitVarInsn(Opcodes.ALOAD, 0);
            get(component);
            Type hashed = isReference(type) ? Type.getType(Object.class) : type;
            Type hasher = isReference(type) ? Type.getType(Objects.class) : Conversion.box(type);
            String hashCode = Type.getMethodDescriptor(Type.INT_TYPE, hashed);
            code.visitMethodInsn(Opcodes.INVOKESTATIC, hasher.getInternalName(), "hashCode", hashCode, false);
            code.visitInsn(Opcodes.IADD);
        }
        code.visitInsn(Opcodes.IRETURN);
    }

    private void addEquals() {
        Label others = new Label();
        Label differ = new Label();
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitJumpInsn(Opcodes.IF_ACMPNE, others);
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        begin(others);
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitTypeInsn(Opcodes.INSTANCEOF, owner);
        code.visitJumpInsn(Opcodes.IFEQ, differ);
        for (int i = FIRST_COMPONENT; i < arguments.length; i++) {
            Handle component = (Handle) arguments[i];
            code.visitVarInsn(Opcodes.ALOAD, 0);
            get(component);
            code.visitVarInsn(Opcodes.ALOAD, 1);
            code.visitTypeInsn(Opcodes.CHECKCAST, owner);
            get(component);
            jumpIfDifferent(Type.getType(component.getDesc()), differ);
        }
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        begin(differ);
        code.visitInsn(Opcodes.ICONST_0);
        code.visitInsn(Opcodes.IRETURN);
    }

    private void jumpIfDifferent(Type type, Label differ) {
        if (isReference(type)) {
            String equals = "(Ljava/lang/Object;Ljava/lang/Object;)Z";
            code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "equals", equals, false);
            code.visitJumpInsn(Opcodes.IFEQ, differ);
        } else {
            // For floating point too it is what ObjectMethods asks.
            String compare = Type.getMethodDescriptor(Type.INT_TYPE, type, type);
            String box = Conversion.box(type).getInternalName();
            code.visitMethodInsn(Opcodes.INVOKESTATIC, box, "compare", compare, false);
            code.visitJumpInsn(Opcodes.IFNE, differ);
        }
    }

    private void get(Handle component) {
        code.visitFieldInsn(Opcodes.GETFIELD, owner, component.getName(), component.getDesc());
    }

    private void begin(Label label) {
        code.visitLabel(label);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    }

    private static boolean isReference(Type type) {
        return type.getSort() == Type.OBJECT || type.getSort() == Type.ARRAY;
    }
}
