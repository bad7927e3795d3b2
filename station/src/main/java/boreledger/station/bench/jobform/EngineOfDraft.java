package boreledger.station.bench.jobform;

import boreledger.station.bench.look.EngineDrawing;
import boreledger.station.job.Engine.Arrangement;
import boreledger.station.job.draft.Field;
import boreledger.station.job.draft.JobDraft;
import java.util.stream.Stream;

/** The engine that a form describes so far. */
final class EngineOfDraft {
  private static final int MOST_CYLINDERS = 64;

  private EngineOfDraft() {}

  /** Shows it; nothing while its cylinders or their arrangement are not known. */
  static void show(JobDraft draft, EngineDrawing drawing) {
    String typed = draft.text(Field.CYLINDERS).strip();
    int cylinders = typed.matches("\\d{1,2}") ? Integer.parseInt(typed) : 0;
    Arrangement arrangement =
        Stream.of(Arrangement.values())
            .filter(each -> each.name().equalsIgnoreCase(draft.text(Field.ARRANGEMENT).strip()))
            .findFirst()
            .orElse(null);
    drawing.show(arrangement, cylinders > MOST_CYLINDERS ? 0 : cylinders);
  }
}
