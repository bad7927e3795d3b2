package boreledger.calc.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table of published figures among the test resources; it must say where it comes from. */
public final class ReferenceTable {
  private ReferenceTable() {}

  /**
   * Rows by column name. A file without a comment on its first line, or without rows, is refused.
   */
  public static List<Map<String, String>> rows(String file) {
    List<String> lines = lines(file);
    if (!lines.get(0).startsWith("#") || !lines.get(0).contains("Tolerance")) {
      throw new AssertionError(file + " does not begin with its origin and tolerance");
    }
    List<String> plain = lines.stream().filter(line -> !line.startsWith("#")).toList();
    List<String> columns = cells(plain.get(0));
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : plain.subList(1, plain.size())) {
      Map<String, String> row = new LinkedHashMap<>();
      List<String> values = cells(line);
      for (int i = 0; i < columns.size(); i++) {
        row.put(columns.get(i), values.get(i));
      }
      rows.add(row);
    }
    if (rows.isEmpty()) {
      throw new AssertionError(file + " has no rows");
    }
    return rows;
  }

  /** Every line of a file. */
  public static List<String> lines(String file) {
    try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
