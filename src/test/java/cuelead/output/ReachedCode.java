package cuelead.output;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassReader;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Handle;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.MethodVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Opcodes;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Type;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Follows byte code from some methods to all that they may call within a few packages, through every implementation of
 * what is called by an interface, and collects what they do otherwise: calls to the outside, new objects, locks and
 * lambdas.
 */
final class ReachedCode {
    private static final int API = Opcodes.ASM9;

    private final JavaClasses house;
    private final Set<Method> seen = new HashSet<>();
    private final Deque<Method> toRead = new ArrayDeque<>();
    /** What is done, and a method that does it. */
    private final Map<String, String> deeds = new TreeMap<>();

    private record Method(String type, String name, String descriptor) {
        @Override
        public String toString() {
            return type.substring(type.lastIndexOf('.') + 1) + "." + name;
        }
    }

    private ReachedCode(JavaClasses house) {
        this.house = house;
    }

    /** Within the program's packages of these names. */
    static ReachedCode within(String... packages) {
        return new ReachedCode(new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages(packages));
    }

    static ReachedCode within(Class<?>... types) {
        return new ReachedCode(new ClassFileImporter().importClasses(types));
    }

    /** All methods of a name, and what they reach. */
    ReachedCode from(Class<?> type, String method) {
        int before = toRead.size();
        house.get(type).getMethods().stream()
                .filter(found -> found.getName().equals(method))
                .forEach(found -> add(type.getName(), method, descriptor(found.reflect())));
        if (toRead.size() == before) {
            throw new IllegalArgumentException("no method " + method + " in " + type);
        }
        while (!toRead.isEmpty()) {
            read(toRead.pop());
        }
        return this;
    }

    private static String descriptor(java.lang.reflect.Method method) {
        return Type.getMethodDescriptor(method);
    }

    /** What is done, each with a method that does it. */
    Map<String, String> deeds() {
        return deeds;
    }

    /** Whether a method is among what is reached. */
    boolean reaches(Class<?> type, String method) {
        return seen.stream()
                .anyMatch(found ->
                        found.type().equals(type.getName()) && found.name().equals(method));
    }

    private void add(String type, String name, String descriptor) {
        Method method = new Method(type, name, descriptor);
        if (seen.add(method)) {
            toRead.push(method);
        }
    }

    private void call(Method by, String type, String name, String descriptor) {
        if (!house.contain(type)) {
            deeds.putIfAbsent(type + "." + name, by.toString());
            return;
        }
        JavaClass called = house.get(type);
        add(type, name, descriptor);
        called.getAllRawSuperclasses().forEach(above -> addInHouse(above, name, descriptor));
        if (!name.equals("<init>")) {
            called.getAllSubclasses().forEach(below -> addInHouse(below, name, descriptor));
        }
    }

    private void addInHouse(JavaClass type, String name, String descriptor) {
        if (house.contain(type.getName())) {
            add(type.getName(), name, descriptor);
        }
    }

    private void read(Method method) {
        String file = "/" + method.type().replace('.', '/') + ".class";
        try (InputStream code = ReachedCode.class.getResourceAsStream(file)) {
            new ClassReader(code).accept(new MethodFinder(method), ClassReader.SKIP_DEBUG);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private final class MethodFinder extends ClassVisitor {
        private final Method wanted;

        MethodFinder(Method wanted) {
            super(API);
            this.wanted = wanted;
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            if (!name.equals(wanted.name()) || !descriptor.equals(wanted.descriptor())) {
                return null;
            }
            if ((access & Opcodes.ACC_SYNCHRONIZED) != 0) {
                deeds.putIfAbsent("synchronized", wanted.toString());
            }
            return new Deeds(wanted);
        }
    }

    private final class Deeds extends MethodVisitor {
        private final Method method;

        Deeds(Method method) {
            super(API);
            this.method = method;
        }

        private void note(String deed) {
            deeds.putIfAbsent(deed, method.toString());
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            String type = owner.startsWith("[") ? "java.lang.Object" : owner.replace('/', '.');
            call(method, type, name, descriptor);
        }

        @Override
        public void visitInvokeDynamicInsn(String name, String descriptor, Handle bootstrap, Object... arguments) {
            note("lambda or string " + bootstrap.getName());
        }

        @Override
        public void visitTypeInsn(int opcode, String type) {
            if (opcode == Opcodes.NEW || opcode == Opcodes.ANEWARRAY) {
                note("new " + type.replace('/', '.'));
            }
        }

        @Override
        public void visitIntInsn(int opcode, int operand) {
            if (opcode == Opcodes.NEWARRAY) {
                note("new array");
            }
        }

        @Override
        public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
            note("new array");
        }

        @Override
        public void visitInsn(int opcode) {
            if (opcode == Opcodes.MONITORENTER) {
                note("synchronized");
            }
        }
    }
}
