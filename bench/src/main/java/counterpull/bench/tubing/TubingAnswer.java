package counterpull.bench.tubing;

import counterpull.bench.Answer;
import counterpull.bench.Estimate;
import counterpull.bench.Remark;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.Unloading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From a bench to its answer: checks, fits, choice, what is lost. */
final class TubingAnswer {
    private final TubingBench bench;
    private final Samples samples;
    private final Area area;
    private final List<Remark> remarks = new ArrayList<>();

    private TubingAnswer(TubingBench bench) {
        this.bench = bench;
        samples = new Samples(bench);
        area = Area.of(bench.piece().section());
    }

    static Answer<TubingResult> of(TubingBench bench) {
        List<Remark> wrong = BenchCheck.of(bench);
        if (wrong.stream().anyMatch(Remark::refuses)) {
            return Answer.refused(wrong);
        }
        TubingAnswer answer = new TubingAnswer(bench);
        answer.remarks.addAll(wrong);
        return answer.found();
    }

    private Answer<TubingResult> found() {
        Sample sample = samples.of(NamedPull.stretching(bench.pulls()));
        List<Tried> all = Tried.all(sample, area);
        Optional<Choice> choice = Choice.of(all);
        if (choice.isEmpty()) {
            remarks.add(Remark.refuses(
                    "no-law", "no curve can be laid through pull 1 to pull " + sample.size() + ": " + reasons(all)));
            return Answer.refused(remarks);
        }
        try {
            TubingResult result = result(sample, all, choice.get());
            remarks.addAll(Afterwards.of(bench, sample, result));
            return Answer.of(result, remarks);
        } catch (Refusal refused) {
            remarks.add(Remark.refuses(
                    "no-law",
                    "the curve through pull 1 to pull " + sample.size() + " is no rubber's: " + refused.getMessage()));
            return Answer.refused(remarks.stream().filter(Remark::refuses).toList());
        }
    }

    private static String reasons(List<Tried> all) {
        return all.get(0).candidate().refused();
    }

    private TubingResult result(Sample sample, List<Tried> all, Choice choice) {
        CurveFit curve = choice.tried().curve().orElseThrow();
        ElasticLaw law = choice.tried().law().law(area.squareMetres());
        double natural = curve.natural().value();
        Optional<Loss> loss = loss(sample, curve, law);
        Unloading unloading = loss.map(Loss::unloading).orElse(LossFraction.NONE);
        Rubber rubber = new Rubber(bench.piece().tag(), natural, law, unloading, sample.last(), 0, 0);
        Estimate tape = bench.natural().estimate(bench.instruments().tape());
        Optional<Estimate> set = bench.after()
                .map(after -> PermanentSet.of(
                        bench.natural(), after, bench.instruments().tape()));
        return new TubingResult(
                rubber,
                all.stream().map(Tried::candidate).toList(),
                choice.tried().candidate().family(),
                choice.why(),
                new Band(curve, natural, sample.last()),
                new TubingResult.Lengths(tape, curve.natural(), set),
                loss,
                softening(sample, curve));
    }

    private Optional<Loss> loss(Sample up, CurveFit curve, ElasticLaw law) {
        List<NamedPull> down = NamedPull.lettingGo(bench.pulls()).stream()
                .filter(pull -> pull.length() <= up.last() + 1e-9
                        && pull.length() > curve.natural().value())
                .toList();
        if (down.isEmpty()) {
            return Optional.empty();
        }
        Sample sample = samples.of(down);
        Against against = new Against(curve, sample);
        double from = Math.max(up.lengths[0], sample.lengths[0]);
        double to = Math.max(from, sample.last());
        Estimate returned = against.meanShare(Math.min(from, to), to);
        Estimate lost = Shares.lost(returned);
        double natural = curve.natural().value();
        return Optional.of(new Loss(lost, Math.min(from, to), to, LossLaw.of(against, lost, law, natural, up.last())));
    }

    private Optional<Softening> softening(Sample up, CurveFit curve) {
        List<NamedPull> first = NamedPull.firstStretch(bench.pulls()).stream()
                .filter(pull -> pull.length() <= up.last() + 1e-9
                        && pull.length() > curve.natural().value())
                .toList();
        if (first.isEmpty()) {
            return Optional.empty();
        }
        Sample sample = samples.of(first);
        Estimate share = new Against(curve, sample).meanShare(sample.lengths[0], sample.last());
        return Optional.of(new Softening(Shares.fall(share), first.size()));
    }
}
