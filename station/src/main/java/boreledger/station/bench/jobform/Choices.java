package boreledger.station.bench.jobform;

import boreledger.calc.gapping.GapRule;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Text;
import boreledger.station.job.draft.Field;
import boreledger.station.table.GapRuleTable;
import boreledger.station.table.Material;
import boreledger.station.table.Tables;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What there is to choose from, by field. */
final class Choices {
  private static final List<Field> MATERIALS =
      List.of(Field.BLOCK_MATERIAL, Field.LINER_MATERIAL, Field.RING_MATERIAL);

  private final Tables tables;

  Choices(Tables tables) {
    this.tables = tables;
  }

  /**
   * Something to choose.
   *
   * @param value what goes into the draft; empty for leaving the field out
   * @param words what a person reads in the list
   * @param brief what stands in the form once it is chosen
   */
  record Choice(String value, String words, String brief) {
    Choice(String value, String words) {
      this(value, words, words);
    }
  }

  /** The few that stand side by side; empty when the field has none. */
  List<Choice> few(Field field) {
    return switch (field) {
      case DISPLAY_UNIT ->
          List.of(choice("mm", JobFormText.CHOICE_MM), choice("in", JobFormText.CHOICE_IN));
      case ARRANGEMENT ->
          List.of(
              choice("inline", JobFormText.CHOICE_INLINE),
              choice("vee", JobFormText.CHOICE_VEE),
              choice("flat", JobFormText.CHOICE_FLAT));
      case CONDITION ->
          List.of(
              choice("", JobFormText.CHOICE_NOT_SAID),
              choice("bare", JobFormText.CHOICE_BARE),
              choice("torque-plate", JobFormText.CHOICE_TORQUE_PLATE));
      case MAIN_CAPS ->
          List.of(
              choice("", JobFormText.CHOICE_NOT_SAID),
              choice("torqued", JobFormText.CHOICE_TORQUED),
              choice("loose", JobFormText.CHOICE_LOOSE));
      case SETTING_KIND ->
          List.of(
              choice("ring", JobFormText.CHOICE_SETTING_RING),
              choice("micrometer", JobFormText.CHOICE_MICROMETER));
      default -> List.of();
    };
  }

  /** The many that stand in a list; empty when the field has none. */
  List<Choice> many(Field field) {
    List<Choice> choices = new ArrayList<>();
    if (field == Field.RULE) {
      choices.add(choice("", JobFormText.CHOICE_OWN_TARGET));
      for (GapRuleTable.Use use : tables.gapRules().uses().values()) {
        String words = JobFormText.CHOICE_RULE.with(use.name(), use.words());
        choices.add(new Choice(use.name(), words, use.name()));
      }
    } else if (MATERIALS.contains(field)) {
      boolean isLiner = field == Field.LINER_MATERIAL;
      choices.add(
          choice("", isLiner ? JobFormText.CHOICE_NO_LINER : JobFormText.CHOICE_OTHER_MATERIAL));
      for (Material material : tables.materials().all()) {
        String words = JobFormText.CHOICE_MATERIAL.with(material.name(), millionths(material));
        choices.add(new Choice(material.name(), words));
      }
    }
    return choices;
  }

  /** What a choice means and where its figures come from; empty when there is nothing to say. */
  String meaning(Field field, String value) {
    if (value.isEmpty()) {
      return "";
    }
    if (field == Field.RULE) {
      return rule(value);
    }
    return MATERIALS.contains(field)
        ? tables.materials().all().stream()
            .filter(material -> material.name().equals(value))
            .map(Material::origin)
            .findFirst()
            .orElse("")
        : "";
  }

  private String rule(String use) {
    List<GapRule> rows =
        tables.gapRules().rules().rows().stream().filter(row -> row.use().equals(use)).toList();
    if (rows.isEmpty()) {
      return "";
    }
    return JobFormText.RULE_WORDS.with(
        rows.stream().map(Choices::factor).collect(Collectors.joining(", ")),
        rows.stream()
            .map(row -> row.origin().split(":")[0])
            .distinct()
            .collect(Collectors.joining("; ")),
        tables.gapRules().uses().get(use).words());
  }

  private static String factor(GapRule row) {
    return row.verifyOnly()
        ? JobFormText.RULE_VERIFY.with(row.ring())
        : JobFormText.RULE_FACTOR.with(row.ring(), Lengths.plain(row.factor()));
  }

  private static String millionths(Material material) {
    return BigDecimal.valueOf(material.ctePerK())
        .movePointRight(6)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Choice choice(String value, Text words) {
    return new Choice(value, words.with());
  }
}
