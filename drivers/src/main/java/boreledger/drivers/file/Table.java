package boreledger.drivers.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tomlj.TomlKeyValue;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A table of a TOML file. It remembers which keys it was asked for, so that {@link #done()} can
 * refuse the rest. A sub table is opened once, by one reader: what was asked of it is known to the
 * opened one only.
 *
 * <p>One thread uses it.
 */
public final class Table {
  private final String file;
  private final String name;
  private final TomlTable content;
  private final TomlPosition position;
  private final Set<String> known = new LinkedHashSet<>();
  private final List<Table> opened = new ArrayList<>();

  /**
   * @param name how messages name the table, such as {@code [line]}; empty for the whole file
   */
  Table(String file, String name, TomlTable content, TomlPosition position) {
    this.file = file;
    this.name = name;
    this.content = content;
    this.position = position;
  }

  /** Whether the key is there. The key counts as known from now on. */
  public boolean has(String key) {
    known.add(key);
    return content.contains(List.of(key));
  }

  /** The value of a key that may be left out. */
  public Optional<Value> optional(String key) {
    return has(key) ? Optional.of(valueOf(key)) : Optional.empty();
  }

  /**
   * The value of a key that must be there.
   *
   * @throws FileProblem at the table's position if it is not
   */
  public Value required(String key) throws FileProblem {
    if (!has(key)) {
      throw problem("missing " + key + where() + ", which is required" + mistyped(key));
    }
    return valueOf(key);
  }

  /** The number of a key, or null when it is left out. */
  public Double numberOrNull(String key) throws FileProblem {
    return has(key) ? Double.valueOf(valueOf(key).number()) : null;
  }

  /** The text of a key, or null when it is left out. */
  public String stringOrNull(String key) throws FileProblem {
    return has(key) ? valueOf(key).string() : null;
  }

  /** The table of a key that must be there. */
  public Table table(String key) throws FileProblem {
    return required(key).table();
  }

  /** The tables of a key; an empty list when it is left out. */
  public List<Table> tables(String key) throws FileProblem {
    return has(key) ? valueOf(key).tables() : List.of();
  }

  /** A problem with the table as a whole, at its position. */
  public FileProblem problem(String what) {
    return FileProblem.at(file, position.line(), position.column(), what);
  }

  /**
   * Checks that nothing stands here, or in a table opened from here, that was not asked for.
   *
   * @throws FileProblem at the first unknown key, with the nearest known one
   */
  public void done() throws FileProblem {
    for (String key : content.keySet()) {
      if (!known.contains(key)) {
        throw valueOf(key).atKey("unknown key " + OneLine.of(key) + where() + hint(key));
      }
    }
    for (Table table : opened) {
      table.done();
    }
  }

  Table open(String tableName, TomlTable table, TomlPosition at) {
    Table child = new Table(file, tableName, table, at);
    opened.add(child);
    return child;
  }

  private Value valueOf(String key) {
    TomlKeyValue entry = content.entry(List.of(key));
    return new Value(file, this, key, entry.position(), entry.value());
  }

  private String where() {
    return name.isEmpty() ? "" : " in " + name;
  }

  private String hint(String key) {
    return NearestWord.of(key, known)
        .map(near -> ", did you mean " + near + "?")
        .orElse(", expected one of " + String.join(", ", known));
  }

  private String mistyped(String key) {
    List<String> strangers = new ArrayList<>(content.keySet());
    strangers.removeAll(known);
    return NearestWord.of(key, strangers)
        .map(near -> "; line " + valueOf(near).line() + " has " + OneLine.of(near))
        .orElse("");
  }
}
