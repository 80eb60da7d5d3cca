package counterpull.report;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.report.card.FloorCard;
import counterpull.report.result.*;
import counterpull.report.table.*;
import java.nio.file.*;

public class TryOut {
    public static void main(String[] a) throws Exception {
        long t = System.currentTimeMillis();
        Findings f = Demo.usual();
        System.err.println("search " + (System.currentTimeMillis() - t) + " ms "
                + f.others().choice().get().extent());
        try (var o = Files.newOutputStream(Path.of(a[0], "report.html"))) {
            counterpull.report.page.ReportWriter.html(f, o);
        }
        try (var o = Files.newOutputStream(Path.of(a[0], "card.pdf"))) {
            System.err.println(FloorCard.pdf(f, o));
        }
        System.out.println(ProfileTables.text(f.first().profile(), TextChoice.usual(UnitSet.METRIC)));
        System.out.println(
                WhyText.of("left knee", f.first().profile().why(0, Joint.KNEE, Phase.LIFTING, 0), UnitSet.METRIC, 100));
        System.out.println(WhyText.of("force", f.first().profile().whyForce(Phase.LIFTING, 0), UnitSet.IMPERIAL, 100));
    }
}
