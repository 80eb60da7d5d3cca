package counterpull.app.cli;

import counterpull.report.Findings;
import counterpull.report.Setup;
import counterpull.report.card.FloorCard;
import counterpull.report.page.ReportWriter;
import counterpull.report.result.ProfileTables;
import counterpull.report.result.ResultJson;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder that gets everything that is written of one job: report, card for each set, CSV, its dictionary, JSON. */
final class Folder {
    private final Path folder;

    Folder(Path folder) {
        this.folder = folder;
    }

    /** Makes the folder now, so that a wrong name is said before a long search and not after it. */
    Folder make() {
        try {
            Files.createDirectories(folder);
            if (!Files.isWritable(folder)) {
                throw new AccessDeniedException(folder.toString());
            }
            return this;
        } catch (IOException e) {
            throw Unwritable.folder(folder, e);
        }
    }

    void write(Findings findings, PrintWriter out) {
        try {
            Files.createDirectories(folder);
            text("report.html", ReportWriter.html(findings), out);
            for (Setup setup : findings.chosen()) {
                card(findings, setup, out);
            }
            text("profile.csv", ProfileTables.csv(findings.first().profile(), findings.unitSet()), out);
            text("columns.csv", ProfileTables.dictionary(findings.first().profile(), findings.unitSet()), out);
            json(findings, out);
        } catch (IOException e) {
            throw Unwritable.folder(folder, e);
        }
    }

    private void card(Findings findings, Setup setup, PrintWriter out) throws IOException {
        String name = findings.split() ? "card-" + setup.name().replace(' ', '-') + ".pdf" : "card.pdf";
        try (OutputStream to = Files.newOutputStream(folder.resolve(name))) {
            FloorCard.pdf(findings, setup, to).forEach(out::println);
        }
        out.println("wrote " + folder.resolve(name));
    }

    private void json(Findings findings, PrintWriter out) throws IOException {
        Path file = folder.resolve("result.json");
        try (OutputStream to = Files.newOutputStream(file)) {
            ResultJson.write(findings, to);
        }
        out.println("wrote " + file);
    }

    private void text(String name, String text, PrintWriter out) throws IOException {
        Files.writeString(folder.resolve(name), text);
        out.println("wrote " + folder.resolve(name));
    }
}
