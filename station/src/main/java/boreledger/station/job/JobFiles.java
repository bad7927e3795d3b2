package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.TextFile;
import boreledger.station.table.ContentHash;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Reads job files. Whatever is not understood, or cannot be, is refused with its place; nothing is
 * half-read.
 */
public final class JobFiles {
  private final Tables tables;

  /** Reads jobs against the tables in force. */
  public JobFiles(Tables tables) {
    this.tables = tables;
  }

  /**
   * Reads a job file.
   *
   * @throws FileProblem at the first thing that is not understood or cannot be
   */
  public Job read(Path path) throws FileProblem {
    TextFile file = TextFile.read(path, StrictToml.MAX_BYTES);
    return parse(path.toString(), file.fileName(), file.text());
  }

  /**
   * Reads a job kept in a ledger.
   *
   * @param fileName the name of the file it came from
   */
  public Job parse(String fileName, String text) throws FileProblem {
    return parse(fileName, fileName, text);
  }

  private Job parse(String shown, String fileName, String text) throws FileProblem {
    Table top = StrictToml.parse(shown, text);
    top.required("format").oneOf(Map.of("boreledger-job/1", true));
    String name = top.required("name").string();
    DisplayUnit unit =
        top.required("display_unit").oneOf(Map.of("mm", DisplayUnit.MM, "in", DisplayUnit.IN));
    Engine engine = new EngineSection(tables.materials()).engine(top.table("engine"));
    List<Ring> rings = new RingSection(tables).rings(top.tables("ring"), engine);
    Job job =
        new Job(
            new JobSource(fileName, text, ContentHash.of(text)),
            name,
            unit,
            engine,
            LimitsSection.limits(top.optional("limits"), engine),
            PlanSection.plan(top.table("plan"), Ring.deepestMm(rings, engine)),
            SettingSection.setting(top.table("setting"), engine),
            rings,
            RunningSection.running(top.optional("running")),
            EngineSection.pistons(top.tables("piston"), engine),
            RingSection.marks(top.tables("ring_mark"), rings, engine),
            RunningSection.uncertainty(top.optional("uncertainty")));
    top.done();
    return job;
  }
}
