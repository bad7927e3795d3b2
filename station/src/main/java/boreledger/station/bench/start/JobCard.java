package boreledger.station.bench.start;

import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.StartText;
import boreledger.station.bench.words.Text;
import boreledger.station.job.Engine;
import boreledger.station.job.Engine.Arrangement;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A job that was opened, as a person recognises it.
 *
 * @param details the engine, the plan and the rings, a line each
 */
public record JobCard(Path file, Job job, String name, List<String> details) {
  private static final Map<Arrangement, Text> ARRANGEMENTS =
      Map.of(
          Arrangement.INLINE, StartText.INLINE,
          Arrangement.VEE, StartText.VEE,
          Arrangement.FLAT, StartText.FLAT);

  static JobCard of(Path file, Job job) {
    Lengths lengths = new Lengths(job.displayUnit());
    Engine engine = job.engine();
    String cylinders = Integer.toString(engine.cylinders());
    String size = lengths.depth(engine.nominalBoreMm());
    String stroke = lengths.depth(engine.strokeMm());
    return new JobCard(
        file,
        job,
        job.name(),
        List.of(
            StartText.ENGINE.with(
                cylinders, ARRANGEMENTS.get(engine.arrangement()).with(), size, stroke),
            StartText.PLAN.with(
                Integer.toString(job.plan().depthsMm().size()),
                String.join(", ", job.plan().axes())),
            job.rings().isEmpty()
                ? StartText.NO_RINGS.with()
                : StartText.RINGS.with(
                    String.join(", ", job.rings().stream().map(Ring::name).toList()))));
  }
}
