package counterpull.report.card;

import counterpull.report.Cautions;
import counterpull.report.Exact;
import counterpull.report.Findings;
import counterpull.report.Html;
import counterpull.report.LoadingWords;
import counterpull.report.PlateStack.Horn;
import counterpull.report.Setup;
import counterpull.report.Style;
import counterpull.report.words.LetGoWords;
import java.util.ArrayList;
import java.util.List;

/** The card of one setup as a page of markup: tables for layout, because the PDF library has nothing better. */
final class CardPage {
    private final Findings findings;
    private final Setup setup;
    private final CardWords words;
    private final LoadingWords order;
    private final LetGoWords letGo;
    private final Html html = new Html();

    private CardPage(Findings findings, Setup setup) {
        this.findings = findings;
        this.setup = setup;
        words = new CardWords(findings, setup);
        order = new LoadingWords(setup, findings.units());
        letGo = new LetGoWords(setup.profile(), findings.unitSet());
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
        stop(density);
        foot();
        return html.close().close().done();
    }

    private void head() {
        html.open("table.block fit").open("tr");
        html.open("td").put("span.who", findings.heading().client()).close();
        html.open("td.right").text(findings.heading().machine());
        if (findings.split()) {
            html.empty("br", "", "").put("b", setup.name());
        }
        html.close().close().close();
    }

    private void alarms() {
        List<String> alarms = new ArrayList<>(order.alarms());
        alarms.addAll(letGo.cautions());
        if (!alarms.isEmpty()) {
            html.put("p.alarm block", String.join(" ", alarms));
        }
    }

    private void seating() {
        html.open("table.block rule fit").open("tr");
        name("Seat and back", words.seat());
        name("Heels on", words.row());
        cell(words.hasStop() ? "Bottom stop at" : "No stop; about", words.bottom());
        cell("Top, about", words.top());
        html.close()
                .open("tr")
                .put("td", "colspan", "4", words.stance())
                .close()
                .close();
    }

    /** A name: may break where the line ends. */
    private void name(String label, String value) {
        html.open("td").put("div.label", label).put("div.n", value).close();
    }

    /** A number with its unit: stays in one piece. */
    private void cell(String label, String value) {
        cell(label, new Exact.Said(value, ""));
    }

    private void cell(String label, Exact.Said value) {
        html.open("td").put("div.label q", label).put("div.n q", value.exact());
        if (!value.about().isEmpty()) {
            html.put("div", value.about());
        }
        html.close();
    }

    private void plates() {
        html.open("table.block rule fit").open("tr");
        for (Horn horn : Horn.values()) {
            if (!setup.plates().on(horn).isEmpty()) {
                name(horn == Horn.STACK ? "On the stack" : "Plates " + horn.words(), words.plates(horn));
            }
        }
        cell("In all", words.plateTotal());
        html.close().close();
    }

    private void lines() {
        if (words.lines().isEmpty()) {
            html.put("p.block rule", "No rubber.");
        }
        for (CardLine line : words.lines()) {
            html.open("table.block rule").open("tr");
            html.open("td", "style", "width:21%").put("div.label", "Rubber");
            html.put("div.n", line.line().rubber().tag())
                    .put("div", line.hang())
                    .close();
            html.open("td", "style", "width:37%").put("div.label", "Anchor");
            html.put("div.n", line.line().ends().anchor().name());
            html.put("div", "→ " + line.line().ends().attachment().name()).close();
            cell("Dead length", words.dead(line));
            html.open("td", "style", "width:24%").put("div.label", words.loose(line));
            html.put("div.n q", words.looseness(line));
            html.put("div", "at mark " + words.mark(line)).close();
            html.close().close();
        }
    }

    private void work() {
        html.open("table.block rule fit").open("tr");
        cell("Sets × reps", words.dose());
        cell("Leave", words.left());
        cell("Rest", words.rest());
        for (CardWords.Beat beat : words.beats()) {
            cell(beat.what(), beat.number());
        }
        html.close().close();
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
        for (CardWords.Part part : step.parts()) {
            html.put("span.n", part.plates()).text(part.where());
        }
        html.close();
    }

    private void order(String figure) {
        html.open("table.block rule").open("tr").open("td").put("b", "Load ");
        steps();
        html.put("b", "Unload ").text(String.join(" ", order.unloading())).close();
        if (!figure.isEmpty()) {
            html.open("td.figure").own(figure).close();
        }
        html.close().close();
    }

    private void stop(Density density) {
        html.open("p.block rule").put("b", "Stop when ");
        html.text(String.join("; ", findings.plan().whenToStop()) + ".");
        if (density.tellsLetGo()) {
            html.text(" ").put("b", "If they let go ").text(letGo.brief());
        }
        html.close();
    }

    private void steps() {
        int number = 1;
        for (String step : order.loading()) {
            html.open("span.step").put("b", number + ".").text(" " + step + " ").close();
            number++;
        }
    }

    private void foot() {
        html.open("p.thin")
                .text(Cautions.FOR_CARD + " ")
                .put("span.foot", words.foot())
                .close();
    }
}
