package boreledger.drivers.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import org.tomlj.TomlValue;

/**
 * A value in a TOML file, with its place. Each accessor gives it as one type and refuses every
 * other with file, line, column, what was found and what was expected.
 */
public final class Value {
  private final String file;
  private final Table table;
  private final String key;
  private final TomlPosition keyPosition;
  private final TomlValue content;

  Value(String file, Table table, String key, TomlPosition keyPosition, TomlValue content) {
    this.file = file;
    this.table = table;
    this.key = key;
    this.keyPosition = keyPosition;
    this.content = content;
  }

  /** The line it stands on, from 1. */
  public int line() {
    return content.position().line();
  }

  /** The text, not blank. */
  public String string() throws FileProblem {
    if (text().isBlank()) {
      throw expected("a text");
    }
    return text();
  }

  /** The text, which may be blank. */
  public String text() throws FileProblem {
    if (!content.isString()) {
      throw expected("a text");
    }
    return content.getString();
  }

  /** The finite number; whole numbers are numbers too. */
  public double number() throws FileProblem {
    if (content.isLong()) {
      return content.getLong();
    }
    if (!content.isDouble() || !Double.isFinite(content.getDouble())) {
      throw expected("a number");
    }
    return content.getDouble();
  }

  /** The number, above 0. */
  public double positive() throws FileProblem {
    if (!content.isLong() && !content.isDouble() || !(number() > 0)) {
      throw expected("a number above 0");
    }
    return number();
  }

  /** The number, {@code least} to {@code most}. */
  public double number(double least, double most) throws FileProblem {
    double found = number();
    if (found < least || found > most) {
      throw expected("a number from " + least + " to " + most);
    }
    return found;
  }

  /** The whole number, {@code least} to {@code most}. */
  public int integer(int least, int most) throws FileProblem {
    return (int) whole(least, most);
  }

  /** The whole number, {@code least} to {@code most}, which may be beyond an int. */
  public long whole(long least, long most) throws FileProblem {
    if (!content.isLong() || content.getLong() < least || content.getLong() > most) {
      throw expected("a whole number from " + least + " to " + most);
    }
    return content.getLong();
  }

  /** The finite number as the decimal that was written; exact up to 15 digits. */
  public BigDecimal decimal() throws FileProblem {
    return content.isLong() ? BigDecimal.valueOf(content.getLong()) : BigDecimal.valueOf(number());
  }

  /** True or false. */
  public boolean flag() throws FileProblem {
    if (!content.isBoolean()) {
      throw expected("true or false");
    }
    return content.getBoolean();
  }

  /** What one of the given words stands for. */
  public <T> T oneOf(Map<String, T> words) throws FileProblem {
    if (!content.isString() || !words.containsKey(content.getString())) {
      throw expected("one of \"" + String.join("\", \"", words.keySet()) + "\"");
    }
    return words.get(content.getString());
  }

  /** The array's values, each with its own place; the array may be empty. */
  public List<Value> list() throws FileProblem {
    if (!content.isArray()) {
      throw expected("an array");
    }
    TomlArray array = content.getArray();
    List<Value> values = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      var entry = array.entry(i);
      String name = "item " + (i + 1) + " of " + key;
      values.add(new Value(file, table, name, entry.position(), entry.value()));
    }
    return values;
  }

  /** The array's numbers; the array may be empty. */
  public List<Double> numbers() throws FileProblem {
    List<Double> numbers = new ArrayList<>();
    for (Value value : list()) {
      numbers.add(value.number());
    }
    return numbers;
  }

  /** The array's texts; the array may be empty. */
  public List<String> strings() throws FileProblem {
    List<String> strings = new ArrayList<>();
    for (Value value : list()) {
      strings.add(value.string());
    }
    return strings;
  }

  /** The table; its keys are part of what {@link Table#done()} checks. */
  public Table table() throws FileProblem {
    return open("[" + OneLine.of(key) + "]", "a table [" + key + "]");
  }

  /** The tables of an array of tables; it may be empty. */
  public List<Table> tables() throws FileProblem {
    if (!content.isArray()) {
      throw expected("tables [[" + key + "]]");
    }
    List<Table> tables = new ArrayList<>();
    for (Value value : list()) {
      tables.add(value.open("[[" + OneLine.of(key) + "]]", "a table"));
    }
    return tables;
  }

  /** A problem with this value: what was found here, and what was expected instead. */
  public FileProblem expected(String what) {
    return problem(OneLine.of(key) + " is " + found() + ", expected " + what);
  }

  /** A problem at this value's place, in words of the caller. */
  public FileProblem problem(String what) {
    return FileProblem.at(file, content.position().line(), content.position().column(), what);
  }

  FileProblem atKey(String what) {
    return FileProblem.at(file, keyPosition.line(), keyPosition.column(), what);
  }

  private Table open(String name, String expected) throws FileProblem {
    if (!content.isTable()) {
      throw expected(expected);
    }
    TomlTable opened = content.getTable();
    return table.open(name, opened, content.position());
  }

  private String found() {
    if (content.isTable()) {
      return "a table";
    }
    if (content.isArray()) {
      return "an array";
    }
    String shown = OneLine.of(String.valueOf(content.get()));
    return content.isString() ? '"' + shown + '"' : shown;
  }
}
