package counterpull.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's own version, from its build. */
public final class Program implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"Counterpull " + version()};
    }

    static String version() {
        Properties properties = new Properties();
        try (InputStream in = Program.class.getResourceAsStream("/counterpull/app/program.properties")) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version");
    }
}
