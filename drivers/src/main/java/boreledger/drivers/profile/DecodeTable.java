package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.math.BigDecimal;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/** A profile's {@code [decode]} table. */
final class DecodeTable {
  private DecodeTable() {}

  static DecodeSpec read(Table table, FrameSpec frame) throws FileProblem {
    if (!table.has("kind")) {
      return pattern(table);
    }
    Value kind = table.required("kind");
    return switch (kind.string()) {
      case "pattern" -> pattern(table);
      case "ieee-488.2" -> new DecodeSpec.Ieee488(NumberKeys.scale(table, BigDecimal.ONE));
      case "integer", "float", "packed-digits" -> InBytesKeys.read(table, kind.string(), frame);
      case "modbus-registers" -> RegisterKeys.read(table, kind, frame);
      default ->
          throw kind.expected(
              "one of \"pattern\", \"ieee-488.2\", \"integer\", \"float\", \"packed-digits\","
                  + " \"modbus-registers\"");
    };
  }

  private static DecodeSpec pattern(Table table) throws FileProblem {
    Value value = table.required("pattern");
    DecodeSpec.ByPattern spec = new DecodeSpec.ByPattern(compile(value));
    if (!spec.hasGroup("value")) {
      throw value.problem("pattern has no group (?<value>...), expected one");
    }
    return spec;
  }

  /** The pattern with flags' groups named as this platform can; as long as before. */
  private static String withGroupNames(String pattern) {
    String named = pattern;
    for (Flag flag : Flag.values()) {
      named = named.replace("(?<" + flag.key() + ">", "(?<" + flag.groupName() + ">");
    }
    return named;
  }

  private static Pattern compile(Value value) throws FileProblem {
    try {
      return Pattern.compile(withGroupNames(value.string()));
    } catch (PatternSyntaxException e) {
      String where = e.getIndex() < 0 ? "" : " at its character " + (e.getIndex() + 1);
      throw value.problem(
          "pattern is no regular expression: " + e.getDescription().strip() + where);
    }
  }
}
