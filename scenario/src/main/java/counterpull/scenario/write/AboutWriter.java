package counterpull.scenario.write;

import counterpull.scenario.content.About;
import counterpull.scenario.format.Out;

/** Writes what an exercise's author says about it. */
final class AboutWriter {
    private AboutWriter() {}

    static Out about(About about) {
        return new Out()
                .put("name", about.name())
                .put("what", about.what())
                .putGroups(
                        "measure",
                        about.measure(),
                        item -> new Out().put("what", item.what()).put("how", item.how()))
                .put("cautions", about.cautions(), caution -> caution);
    }
}
