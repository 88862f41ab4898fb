package buzzout.build;

import java.util.Map;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** What makes a value of one type of a value of another: a cast, boxing, unboxing, widening. */
record Conversion(Type from, Type to) {
    private static final Map<Type, Type> BOXES = Map.of(
            Type.BOOLEAN_TYPE, Type.getType(Boolean.class),
            Type.BYTE_TYPE, Type.getType(Byte.class),
            Type.CHAR_TYPE, Type.getType(Character.class),
            Type.SHORT_TYPE, Type.getType(Short.class),
            Type.INT_TYPE, Type.getType(Integer.class),
            Type.LONG_TYPE, Type.getType(Long.class),
            Type.FLOAT_TYPE, Type.getType(Float.class),
            Type.DOUBLE_TYPE, Type.getType(Double.class));
    private static final Type OBJECT = Type.getType(Object.class);
    private static final Type NUMBER = Type.getType(Number.class);

    static Conversion between(Type from, Type to) {
        return new Conversion(from, to);
    }

    void write(MethodVisitor code) {
        boolean primitive = isPrimitive(from);
        if (isPrimitive(to)) {
            widen(code, primitive ? from : unbox(code), to);
        } else if (primitive) {
            Type box = box(from);
            String valueOf = Type.getMethodDescriptor(box, from);
            code.visitMethodInsn(Opcodes.INVOKESTATIC, box.getInternalName(), "valueOf", valueOf, false);
        } else if (!from.equals(to) && !to.equals(OBJECT)) {
            code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
        }
    }

    /** Of its own box what is in it; of anything else, as Java does it, what any number can give. */
    private Type unbox(MethodVisitor code) {
        Type unboxed = BOXES.keySet().stream()
                .filter(each -> box(each).equals(from))
                .findFirst()
                .orElse(to);
        boolean number = !unboxed.equals(Type.BOOLEAN_TYPE) && !unboxed.equals(Type.CHAR_TYPE);
        Type holder = box(unboxed).equals(from) || !number ? box(unboxed) : NUMBER;
        if (!holder.equals(from)) {
            code.visitTypeInsn(Opcodes.CHECKCAST, holder.getInternalName());
        }
        String value = unboxed.getClassName() + "Value";
        code.visitMethodInsn(
                Opcodes.INVOKEVIRTUAL, holder.getInternalName(), value, Type.getMethodDescriptor(unboxed), false);
        return unboxed;
    }

    private static void widen(MethodVisitor code, Type narrow, Type wide) {
        int to = wide.getSort();
        switch (narrow.getSort()) {
            case Type.LONG -> write(code, to, Opcodes.NOP, Opcodes.L2F, Opcodes.L2D);
            case Type.FLOAT -> write(code, to, Opcodes.NOP, Opcodes.NOP, Opcodes.F2D);
            case Type.DOUBLE -> {}
            default -> write(code, to, Opcodes.I2L, Opcodes.I2F, Opcodes.I2D);
        }
    }

    private static void write(MethodVisitor code, int to, int toLong, int toFloat, int toDouble) {
        int instruction = switch (to) {
            case Type.LONG -> toLong;
            case Type.FLOAT -> toFloat;
            case Type.DOUBLE -> toDouble;
            default -> Opcodes.NOP;
        };
        if (instruction != Opcodes.NOP) {
            code.visitInsn(instruction);
        }
    }

    /** The class that a primitive value is boxed in. */
    static Type box(Type primitive) {
        Type box = BOXES.get(primitive);
        if (box == null) {
            throw new IllegalArgumentException(primitive + " is no primitive type");
        }
        return box;
    }

    private static boolean isPrimitive(Type type) {
        return BOXES.containsKey(type);
    }
}
