package boreledger.station.job.draft;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a job file into a draft. A value that no job can have is taken over as it stands, so that
 * it can be mended; a key that no job has is refused.
 */
public final class DraftReader {
  private static final BigDecimal PER_KELVIN_BELOW = new BigDecimal("0.001");

  private JobDraft draft = JobDraft.empty();

  private DraftReader() {}

  /**
   * Reads a job file's text.
   *
   * @param fileName what messages call it
   * @throws FileProblem if it is not TOML, or has what a draft has no place for
   */
  public static JobDraft read(String fileName, String text) throws FileProblem {
    Table top = StrictToml.parse(fileName, text);
    if (top.has("format")) {
      top.required("format").string();
    }
    DraftReader reader = new DraftReader();
    for (Section section : Section.values()) {
      reader.section(top, section);
    }
    top.done();
    return reader.draft;
  }

  private void section(Table top, Section section) throws FileProblem {
    if (section.repeated()) {
      List<Table> tables = top.tables(section.key());
      for (int index = 0; index < tables.size(); index++) {
        draft = draft.adding(section);
        part(tables.get(index), section, index);
      }
    } else if (section == Section.JOB) {
      part(top, section, 0);
    } else {
      Optional<Value> table = top.optional(section.key());
      if (table.isPresent()) {
        part(table.get().table(), section, 0);
      }
    }
  }

  private void part(Table table, Section section, int index) throws FileProblem {
    for (Field field : section.fields()) {
      Optional<Value> value = table.optional(field.key());
      if (value.isPresent()) {
        draft = draft.with(new Place(field, index), text(field, value.get()));
      }
    }
  }

  private static String text(Field field, Value value) throws FileProblem {
    List<Field> items = field.withSameKey();
    if (items.size() > 1) {
      List<Value> values = value.list();
      int item = items.indexOf(field);
      if (values.size() > items.size()) {
        throw value.problem(field.key() + " has more than " + items.size() + " items");
      }
      return item < values.size() ? single(field.kind(), values.get(item)) : "";
    }
    return field.kind().isList() ? list(field.kind(), value) : single(field.kind(), value);
  }

  private static String list(Kind kind, Value value) throws FileProblem {
    List<String> texts = new ArrayList<>();
    for (Value item : value.list()) {
      String text = single(kind, item);
      if (kind == Kind.WORDS && !Words.split(text).equals(List.of(text))) {
        throw item.expected("a name without commas, semicolons and blanks around it");
      }
      texts.add(text);
    }
    return String.join(kind == Kind.WORDS ? ", " : "; ", texts);
  }

  private static String single(Kind kind, Value value) throws FileProblem {
    if (!kind.isNumber()) {
      return value.text();
    }
    double number;
    try {
      number = value.number();
    } catch (FileProblem noNumber) {
      // What it should have been is said at its field, where it can be mended.
      return value.text();
    }
    return kind == Kind.COEFFICIENT ? coefficient(number) : plain(BigDecimal.valueOf(number));
  }

  private static String coefficient(double perKelvin) {
    BigDecimal millionths = BigDecimal.valueOf(perKelvin).movePointRight(6);
    return millionths.abs().compareTo(PER_KELVIN_BELOW) < 0
        ? BigDecimal.valueOf(perKelvin).toString()
        : plain(millionths);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
