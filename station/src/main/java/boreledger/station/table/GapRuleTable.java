package boreledger.station.table;

import boreledger.calc.gapping.GapRule;
import boreledger.calc.gapping.GapRules;
import boreledger.calc.input.ImpossibleInput;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The gap rule table as its file has it.
 *
 * @param uses how engines are used, by name, in the file's order
 * @param rules a row for each use and ring
 */
public record GapRuleTable(Map<String, Use> uses, GapRules rules) {
  static final String FILE = "gap-rules.toml";

  /**
   * A use of an engine.
   *
   * @param words what it means
   * @param boosted whether the engine is boosted beyond what its maker meant
   */
  public record Use(String name, String words, boolean boosted) {}

  static GapRuleTable parse(TableFile file) throws FileProblem {
    Table top = StrictToml.parse(file.shown(), file.text());
    top.required("format").oneOf(Map.of("boreledger-gap-rules/1", true));
    Map<String, Use> uses = new LinkedHashMap<>();
    for (Table row : top.tables("use")) {
      String name = row.required("name").string();
      uses.put(name, new Use(name, row.required("words").string(), row.required("boosted").flag()));
    }
    GapRules rules = rules(top, uses);
    top.done();
    return new GapRuleTable(uses, rules);
  }

  private static GapRules rules(Table top, Map<String, Use> uses) throws FileProblem {
    List<GapRule> rules = new ArrayList<>();
    for (Table row : top.tables("rule")) {
      String use = row.required("use").string();
      if (!uses.containsKey(use)) {
        throw row.required("use").expected("the name of a [[use]] of this file");
      }
      rules.add(
          new GapRule(
              use,
              row.required("ring").string(),
              row.has("factor") ? Double.valueOf(row.required("factor").positive()) : null,
              row.required("origin").string(),
              row.has("note") ? row.required("note").string() : ""));
    }
    try {
      return new GapRules(rules);
    } catch (ImpossibleInput e) {
      throw top.problem(e.getMessage());
    }
  }
}
