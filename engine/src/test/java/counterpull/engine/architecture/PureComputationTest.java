package counterpull.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The engine computes and does nothing else, so that the same code runs in the browser and gives the same answer
 * everywhere: no files, clocks, threads, reflection, logging, locales, formatting, chance, and nothing static that changes.
 */
class PureComputationTest {
    private static final Set<String> PACKAGES =
            Set.of("java.lang", "java.util", "java.util.function", "java.util.stream");

    private static final Set<String> REFUSED = Set.of(
            "java.lang.Class",
            "java.lang.ClassLoader",
            "java.lang.InheritableThreadLocal",
            "java.lang.Module",
            "java.lang.Process",
            "java.lang.ProcessBuilder",
            "java.lang.ProcessHandle",
            "java.lang.Runtime",
            "java.lang.SecurityManager",
            "java.lang.StackWalker",
            "java.lang.Thread",
            "java.lang.ThreadGroup",
            "java.lang.ThreadLocal",
            "java.util.Calendar",
            "java.util.Currency",
            "java.util.Date",
            "java.util.Formatter",
            "java.util.GregorianCalendar",
            "java.util.Locale",
            "java.util.Properties",
            "java.util.Random",
            "java.util.ResourceBundle",
            "java.util.Scanner",
            "java.util.ServiceLoader",
            "java.util.SplittableRandom",
            "java.util.TimeZone",
            "java.util.Timer",
            "java.util.UUID");

    private static final Set<String> REFUSED_CALLS = Set.of(
            "java.lang.String.format",
            "java.lang.String.formatted",
            "java.lang.Math.random",
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.System.getProperty",
            "java.lang.System.getenv",
            "java.lang.System.exit");

    private static final Set<String> IMMUTABLE = Set.of("java.lang.String", "java.util.List");

    private final JavaClasses engine = EngineClasses.all();
    private final JavaClasses impure = EngineClasses.only(Impure.class);

    @Test
    void theEngineNeedsTheLanguageAlone() {
        assertThat(EngineClasses.violations(engine, PureComputationTest::foreign))
                .isEmpty();
    }

    @Test
    void nothingFormatsReadsAClockOrDrawsAtRandom() {
        assertThat(EngineClasses.violations(engine, PureComputationTest::impureCalls))
                .isEmpty();
    }

    @Test
    void nothingStaticChanges() {
        assertThat(EngineClasses.violations(engine, PureComputationTest::changingStatics))
                .isEmpty();
    }

    @Test
    void nothingWaitsForAThread() {
        assertThat(EngineClasses.violations(engine, PureComputationTest::threading))
                .isEmpty();
    }

    /** The control: a class with all these faults is found out by each rule. */
    @Test
    void anImpureClassIsFound() {
        assertThat(EngineClasses.violations(impure, PureComputationTest::foreign))
                .anyMatch(line -> line.endsWith("java.io.PrintStream"))
                .anyMatch(line -> line.endsWith("java.lang.Thread"))
                .anyMatch(line -> line.endsWith("java.util.Locale"))
                .anyMatch(line -> line.endsWith("java.util.concurrent.TimeUnit"));
        assertThat(EngineClasses.violations(impure, PureComputationTest::impureCalls))
                .anyMatch(line -> line.endsWith("java.lang.String.format"))
                .anyMatch(line -> line.endsWith("java.lang.System.nanoTime"));
        assertThat(EngineClasses.violations(impure, PureComputationTest::changingStatics))
                .anyMatch(line -> line.contains("Impure.count"))
                .anyMatch(line -> line.contains("Impure.NAMES"))
                .anyMatch(line -> line.contains("Impure.OPEN"));
        assertThat(EngineClasses.violations(impure, PureComputationTest::threading))
                .anyMatch(line -> line.contains("Impure.bump"));
    }

    private static Stream<String> foreign(JavaClass type) {
        return type.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                .filter(target -> !target.isPrimitive())
                .filter(target -> !target.getPackageName().startsWith(EngineClasses.ROOT))
                .filter(target -> !PACKAGES.contains(target.getPackageName()) || REFUSED.contains(target.getName()))
                .map(target -> type.getName() + " needs " + target.getName());
    }

    private static Stream<String> impureCalls(JavaClass type) {
        return type.getMethodCallsFromSelf().stream()
                .map(call -> call.getTargetOwner().getName() + "." + call.getName())
                .filter(REFUSED_CALLS::contains)
                .map(call -> type.getName() + " calls " + call);
    }

    private static Stream<String> threading(JavaClass type) {
        Stream<? extends JavaMember> waiting = type.getMethods().stream()
                .filter(method -> method.getModifiers().contains(JavaModifier.SYNCHRONIZED));
        Stream<? extends JavaMember> shared =
                type.getFields().stream().filter(field -> field.getModifiers().contains(JavaModifier.VOLATILE));
        return Stream.concat(waiting, shared).map(member -> member.getFullName() + " is for threads");
    }

    private static Stream<String> changingStatics(JavaClass type) {
        Stream<JavaField> statics = type.getFields().stream()
                .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
                .filter(field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC))
                .filter(field -> !isFinal(field) || !staysAsItIs(field));
        Stream<JavaField> constants = type.getFields().stream().filter(field -> type.isEnum() && !isFinal(field));
        return Stream.concat(statics, constants).map(field -> field.getFullName() + " can change");
    }

    private static boolean isFinal(JavaField field) {
        return field.getModifiers().contains(JavaModifier.FINAL);
    }

    /** An array is as good as a constant only where nobody outside can reach it. */
    private static boolean staysAsItIs(JavaField field) {
        JavaClass type = field.getRawType();
        if (type.isArray()) {
            return field.getModifiers().contains(JavaModifier.PRIVATE);
        }
        return type.isPrimitive()
                || type.isEnum()
                || type.isRecord()
                || IMMUTABLE.contains(type.getName())
                || (type.getPackageName().startsWith(EngineClasses.ROOT)
                        && List.copyOf(type.getAllFields()).stream().allMatch(PureComputationTest::isFinal));
    }
}
