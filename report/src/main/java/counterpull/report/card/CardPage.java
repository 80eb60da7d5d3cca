package counterpull.report.card;

import counterpull.report.Cautions;
import counterpull.report.Findings;
import counterpull.report.Html;
import counterpull.report.LoadingWords;
import counterpull.report.PlateStack.Horn;
import counterpull.report.Setup;
import counterpull.report.Style;
import java.util.List;

/** The card of one setup as a page of markup: tables for layout, because the PDF library has nothing better. */
final class CardPage {
    private final Findings findings;
    private final Setup setup;
    private final CardWords words;
    private final LoadingWords order;
    private final Html html = new Html();

    private CardPage(Findings findings, Setup setup) {
        this.findings = findings;
        this.setup = setup;
        words = new CardWords(findings, setup);
        order = new LoadingWords(setup, findings.units());
    }

    /**
     * The card's markup.
     *
     * @param density how much room its parts get
     * @param figure a picture of the setup; empty where there is no room for one
     */
    static String of(Findings findings, Setup setup, Density density, String figure) {
        return new CardPage(findings, setup).page(density, figure);
    }

    private String page(Density density, String figure) {
        html.open("html", "xmlns", "http://www.w3.org/1999/xhtml").open("head");
        html.put("title", "Floor card").open("style").own(Style.card()).close().close();
        html.open("body." + density.css());
        head();
        alarms();
        seating();
        plates();
        lines();
        work();
        warmUp();
        order(figure);
        foot();
        return html.close().close().done();
    }

    private void head() {
        html.open("table.block").open("tr");
        html.open("td").put("span.who", findings.heading().client()).close();
        html.open("td.right").text(findings.heading().machine());
        if (findings.split()) {
            html.empty("br", "", "").put("b", setup.name());
        }
        html.close().close().close();
    }

    private void alarms() {
        List<String> alarms = order.alarms();
        if (!alarms.isEmpty()) {
            html.put("p.alarm block", String.join(" ", alarms));
        }
    }

    private void seating() {
        html.open("table.block rule").open("tr");
        cell("Seat and back", words.seat());
        cell("Heels on", words.row());
        cell(words.hasStop() ? "Bottom stop at" : "No stop; bottom", words.bottom());
        cell("Top, about", words.top());
        html.close()
                .open("tr")
                .put("td", "colspan", "4", words.stance())
                .close()
                .close();
    }

    private void cell(String label, String value) {
        html.open("td").put("div.label", label).put("div.n", value).close();
    }

    private void plates() {
        html.open("table.block rule");
        for (Horn horn : Horn.values()) {
            if (!setup.plates().on(horn).isEmpty()) {
                plates("Plates " + horn.words(), setup.plates().words(horn));
            }
        }
        if (setup.plates().stacks().isEmpty()) {
            plates("Plates", "none");
        }
        html.close();
    }

    private void plates(String label, String value) {
        html.open("tr").open("td").put("div.label", label + " (" + words.plateTotal() + ")");
        html.put("div.n", value).close().close();
    }

    private void lines() {
        if (words.lines().isEmpty()) {
            html.put("p.block rule", "No rubber.");
        }
        for (CardLine line : words.lines()) {
            html.open("table.block rule").open("tr");
            html.open("td", "style", "width:27%").put("div.label", "Rubber");
            html.put("div.n", line.line().rubber().tag())
                    .put("div", line.hang())
                    .close();
            html.open("td", "style", "width:33%").put("div.label", "Anchor");
            html.put("div.n", line.line().ends().anchor().name());
            html.put("div", "→ " + line.line().ends().attachment().name()).close();
            cell("Dead length", words.dead(line));
            html.open("td").put("div.label", words.loose(line)).put("div.n", words.looseness(line));
            html.put("div", "at mark " + words.mark(line)).close();
            html.close().close();
        }
    }

    private void work() {
        html.open("table.block rule").open("tr");
        cell("Sets × reps", words.dose());
        cell("Reps to leave", words.left());
        cell("Rest", words.rest());
        html.close().close();
        html.open("p.block").put("span.label", "Tempo: ");
        for (CardWords.Beat beat : words.beats()) {
            html.put("span.n", beat.number()).text(" " + beat.what() + " ");
        }
        html.text(words.turn()).close();
    }

    private void warmUp() {
        List<CardWords.Step> steps = words.warmUp();
        html.open("table.block rule");
        html.open("tr").put("td.label", "colspan", "2", words.warmUpTitle()).close();
        for (int i = 0; i < steps.size(); i += 2) {
            html.open("tr");
            step(steps.get(i));
            if (i + 1 < steps.size()) {
                step(steps.get(i + 1));
            } else {
                html.put("td", "");
            }
            html.close();
        }
        html.close();
    }

    private void step(CardWords.Step step) {
        html.open("td.warm").put("span.n", step.repetitions()).text(" × with ");
        html.put("span.n", step.plates()).close();
    }

    private void order(String figure) {
        html.open("table.block rule").open("tr").open("td").put("b", "Load").open("ol");
        order.loading().forEach(step -> html.put("li", step));
        html.close()
                .put("b", "Unload ")
                .text(String.join(" ", order.unloading()))
                .close();
        if (!figure.isEmpty()) {
            html.open("td.figure").own(figure).close();
        }
        html.close().close();
        html.open("p.block rule").put("b", "Stop when ");
        html.text(String.join("; ", findings.plan().whenToStop()) + ".").close();
    }

    private void foot() {
        html.put("p.block thin", Cautions.FOR_CARD);
        html.put("p.foot", words.foot());
    }
}
