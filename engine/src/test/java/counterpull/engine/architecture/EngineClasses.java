package counterpull.engine.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The compiled classes that the rules look at. */
final class EngineClasses {
    static final String ROOT = "counterpull.engine";

    private EngineClasses() {}

    /** Everything of the engine, without its tests. */
    static JavaClasses all() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages(ROOT);
    }

    /** These classes alone, for a rule's negative control. */
    static JavaClasses only(Class<?>... classes) {
        return new ClassFileImporter().importClasses(classes);
    }

    /** What a rule has to say about each class, in order, each thing once. */
    static List<String> violations(JavaClasses classes, Function<JavaClass, Stream<String>> rule) {
        return classes.stream().flatMap(rule).sorted().distinct().toList();
    }
}
