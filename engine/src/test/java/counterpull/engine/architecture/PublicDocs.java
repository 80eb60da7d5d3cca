package counterpull.engine.architecture;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/** What is missing from the Javadoc of public types, found with the compiler's own parser. */
final class PublicDocs extends TreePathScanner<Void, Boolean> {
    private static final int FEWEST_WORDS = 3;
    private static final Set<String> SAY_NOTHING =
            Set.of("a", "an", "the", "of", "one", "this", "class", "record", "is");

    private final DocTrees docs;
    private final List<String> missing = new ArrayList<>();

    private PublicDocs(DocTrees docs) {
        this.docs = docs;
    }

    /** One line for each thing that is missing from these sources. */
    static List<String> missing(Iterable<? extends JavaFileObject> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavacTask task = (JavacTask) compiler.getTask(null, null, null, List.of("-proc:none"), null, sources);
        PublicDocs found = new PublicDocs(DocTrees.instance(task));
        for (CompilationUnitTree unit : task.parse()) {
            found.scan(new TreePath(unit), true);
        }
        return found.missing;
    }

    @Override
    public Void visitClass(ClassTree type, Boolean reachable) {
        boolean isPublic = reachable && (type.getModifiers().getFlags().contains(Modifier.PUBLIC) || insideInterface());
        if (isPublic) {
            look(type);
        }
        return super.visitClass(type, isPublic);
    }

    private boolean insideInterface() {
        TreePath parent = getCurrentPath().getParentPath();
        return parent != null && parent.getLeaf().getKind() == Tree.Kind.INTERFACE;
    }

    private void look(ClassTree type) {
        DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
        String name = type.getSimpleName().toString();
        if (comment == null) {
            missing.add(name + " has no Javadoc");
            return;
        }
        if (saysNothingNew(name, words(comment.getFullBody().toString()))) {
            missing.add(name + " has Javadoc that only repeats its name");
        }
        if (type.getKind() == Tree.Kind.RECORD) {
            components(type, comment);
        }
    }

    private void components(ClassTree type, DocCommentTree comment) {
        Map<String, String> described = new LinkedHashMap<>();
        for (DocTree tag : comment.getBlockTags()) {
            if (tag instanceof ParamTree param && !param.isTypeParameter()) {
                described.put(
                        param.getName().getName().toString(),
                        param.getDescription().toString());
            }
        }
        for (Tree member : type.getMembers()) {
            if (member instanceof VariableTree field
                    && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
                String component = field.getName().toString();
                if (described.getOrDefault(component, "").isBlank()) {
                    missing.add(type.getSimpleName() + " says nothing of " + component);
                }
            }
        }
    }

    private static boolean saysNothingNew(String name, Set<String> words) {
        Set<String> rest = new TreeSet<>(words);
        rest.removeAll(words(name.replaceAll("(?<=[a-z])(?=[A-Z])", " ")));
        rest.removeAll(SAY_NOTHING);
        return words.size() < FEWEST_WORDS || rest.isEmpty();
    }

    private static Set<String> words(String text) {
        String[] words = text.toLowerCase(Locale.ROOT).split("[^\\p{L}0-9]+");
        return new TreeSet<>(
                Arrays.stream(words).filter(word -> !word.isEmpty()).toList());
    }
}
