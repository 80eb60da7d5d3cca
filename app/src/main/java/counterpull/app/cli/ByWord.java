package counterpull.app.cli;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.choice.Strategy;
import counterpull.engine.motion.Phase;
import counterpull.engine.strength.Tester;
import counterpull.report.bench.TraceSection;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Options whose value is a word of a short list, or a whole number, as a person writes them. */
final class ByWord {
    private ByWord() {}

    /** Teaches a command line to read them. */
    static CommandLine register(CommandLine command) {
        add(command, Joint.class);
        add(command, Side.class);
        add(command, Phase.class);
        add(command, Strategy.class);
        add(command, Units.class);
        add(command, ProfileFormat.class);
        add(command, WhyCommand.Number.class);
        add(command, DemoCommand.Who.class);
        add(command, TraceSection.Take.class);
        add(command, SureCommand.Format.class);
        add(command, Tester.class);
        return command.registerConverter(int.class, ByWord::whole);
    }

    private static <E extends Enum<E>> void add(CommandLine command, Class<E> type) {
        command.registerConverter(type, of(type));
    }

    /** Capitals do not matter; "load alone", "load-alone" and "load_alone" are the same. */
    static <E extends Enum<E>> ITypeConverter<E> of(Class<E> type) {
        List<E> all = List.of(type.getEnumConstants());
        return text -> all.stream()
                .filter(one -> plain(one.name()).equals(plain(text)))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("\"" + text + "\" is none of " + words(all)));
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    private static String words(List<? extends Enum<?>> all) {
        return String.join(", ", all.stream().map(one -> plain(one.name())).toList());
    }

    private static int whole(String text) {
        String digits = text.strip();
        if (!digits.matches("[+-]?\\d{1,9}")) {
            throw new TypeConversionException("\"" + text + "\" is not a whole number");
        }
        return Integer.parseInt(digits);
    }
}
