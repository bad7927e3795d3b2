package boreledger.station.table;

import boreledger.drivers.file.FileProblem;
import java.nio.file.Path;
import java.util.List;

/**
 * The tables that computations fall back on where neither the maker nor the job says otherwise.
 * They stand as files in the program's folder {@code tables}, where a person can change them.
 *
 * @param files the files they were read from
 */
public record Tables(
    Materials materials,
    GapRuleTable gapRules,
    UsualTemperatures temperatures,
    List<TableFile> files) {
  /** The system property that names the program's folder. */
  public static final String HOME = "boreledger.home";

  /** Takes a copy of the list. */
  public Tables {
    files = List.copyOf(files);
  }

  /** The tables in the program's folder; where it has none, those that come with the program. */
  public static Tables inForce() throws FileProblem {
    Path folder = Path.of(System.getProperty(HOME, ".")).resolve("tables");
    return of(
        List.of(
            TableFile.of(Materials.FILE, folder),
            TableFile.of(GapRuleTable.FILE, folder),
            TableFile.of(UsualTemperatures.FILE, folder)));
  }

  /**
   * The tables of given files; one that is not among them is the program's own.
   *
   * @throws FileProblem at the first thing that is not understood
   */
  public static Tables of(List<TableFile> files) throws FileProblem {
    TableFile materials = named(Materials.FILE, files);
    TableFile gapRules = named(GapRuleTable.FILE, files);
    TableFile temperatures = named(UsualTemperatures.FILE, files);
    return new Tables(
        Materials.parse(materials.shown(), materials.text()),
        GapRuleTable.parse(gapRules),
        UsualTemperatures.parse(temperatures),
        List.of(materials, gapRules, temperatures));
  }

  private static TableFile named(String name, List<TableFile> files) {
    return files.stream()
        .filter(file -> file.name().equals(name))
        .findFirst()
        .orElseGet(() -> TableFile.own(name));
  }
}
