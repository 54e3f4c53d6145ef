package costrel.repl;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Keeps a program that is typed at the prompt from closing the console, and the session with it. Calls of
 * {@code System.exit}, {@code Runtime.exit} and {@code Runtime.halt} in what is typed come here instead; a script or a one-shot
 * question may still leave by them.
 */
public final class ExitGuard {

    private static volatile boolean stays;

    private ExitGuard() {}

    /** From now on, or no longer, the console stays whatever is typed. */
    static void stay(boolean whatever) {
        stays = whatever;
    }

    /**
     * What is called in place of {@code System.exit}.
     *
     * @param code the exit code that was asked for
     * @throws IllegalArgumentException at the prompt
     */
    public static void leave(int code) {
        if (stays) {
            throw new IllegalArgumentException("leaving with code " + code
                    + " would lose what this session holds and is not done; type exit, or press Ctrl-D, to leave");
        }
        System.exit(code);
    }

    /**
     * What is called in place of {@code exit} and {@code halt} of the runtime.
     *
     * @param runtime the runtime
     * @param code the exit code that was asked for
     * @throws IllegalArgumentException at the prompt
     */
    public static void leave(Runtime runtime, int code) {
        leave(code);
        runtime.halt(code);
    }

    /** A class with its ways out led through here. */
    static byte[] guarded(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public MethodVisitor visitMethod(
                            int access, String name, String descriptor, String signature, String[] exceptions) {
                        return new WaysOut(super.visitMethod(access, name, descriptor, signature, exceptions));
                    }
                },
                0);
        return writer.toByteArray();
    }

    /** Replaces the calls of one method. */
    private static final class WaysOut extends MethodVisitor {

        private static final String HERE = ExitGuard.class.getName().replace('.', '/');

        WaysOut(MethodVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean onInterface) {
            boolean exits = descriptor.equals("(I)V") && (name.equals("exit") || name.equals("halt"));
            if (exits && owner.equals("java/lang/System")) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, HERE, "leave", "(I)V", false);
            } else if (exits && owner.equals("java/lang/Runtime")) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, HERE, "leave", "(Ljava/lang/Runtime;I)V", false);
            } else {
                super.visitMethodInsn(opcode, owner, name, descriptor, onInterface);
            }
        }
    }
}
