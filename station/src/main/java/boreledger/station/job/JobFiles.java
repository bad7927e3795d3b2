package boreledger.station.job;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.TextFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * Reads job files. Whatever is not understood, or cannot be, is refused with its place; nothing is
 * half-read.
 */
public final class JobFiles {
  private final Materials materials;

  /** Reads jobs against a materials table. */
  public JobFiles(Materials materials) {
    this.materials = materials;
  }

  /** Reads jobs against the materials table that comes with the program. */
  public static JobFiles withOwnMaterials() {
    String name = "materials.toml";
    try (InputStream in = JobFiles.class.getResourceAsStream(name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new JobFiles(Materials.parse(name, text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
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
    Engine engine = new EngineSection(materials).engine(top.table("engine"));
    List<Ring> rings = new RingSection(materials).rings(top.tables("ring"), engine);
    Job job =
        new Job(
            new JobSource(fileName, text, sha256(text)),
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

  private static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
