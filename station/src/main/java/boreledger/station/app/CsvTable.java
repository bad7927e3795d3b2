package boreledger.station.app;

import boreledger.calc.input.ImpossibleInput;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.TextFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A CSV file (RFC 4180) with a header, whose columns a computation reads by name. */
public final class CsvTable {
  private static final int MAX_BYTES = 16 << 20;
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setTrim(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .build();

  private CsvTable() {}

  /** What a computation makes of a row. */
  @FunctionalInterface
  public interface RowReader<T> {
    /** Reads a row. */
    T read(Row row) throws FileProblem;
  }

  /**
   * Reads every row.
   *
   * @param columns the columns that must be there; others are left alone
   */
  public static <T> List<T> read(Path path, List<String> columns, RowReader<T> reader)
      throws FileProblem {
    String text = TextFile.read(path, MAX_BYTES).text();
    List<T> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      for (String column : columns) {
        if (!parser.getHeaderNames().contains(column)) {
          throw FileProblem.at(
              path.toString(),
              1,
              "no column " + column + ", expected " + String.join(", ", columns));
        }
      }
      for (CSVRecord csv : parser) {
        Row row = new Row(path.toString(), (int) parser.getCurrentLineNumber(), csv);
        try {
          rows.add(reader.read(row));
        } catch (ImpossibleInput e) {
          throw row.problem(e.getMessage());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (IllegalArgumentException | UncheckedIOException e) {
      throw FileProblem.of(path.toString(), "not a CSV file with a header: " + e.getMessage(), e);
    }
    return rows;
  }

  /** One row. */
  public static final class Row {
    private final String file;
    private final int line;
    private final CSVRecord csv;

    private Row(String file, int line, CSVRecord csv) {
      this.file = file;
      this.line = line;
      this.csv = csv;
    }

    /** A cell's text, not empty. */
    public String text(String column) throws FileProblem {
      if (!csv.isSet(column) || csv.get(column).isEmpty()) {
        throw problem("no " + column + " in this row");
      }
      return csv.get(column);
    }

    /** A cell's number. */
    public double number(String column) throws FileProblem {
      String text = text(column);
      try {
        double number = Double.parseDouble(text);
        if (Double.isFinite(number)) {
          return number;
        }
      } catch (NumberFormatException e) {
        throw problem(column + " is " + text + ", expected a number");
      }
      throw problem(column + " is " + text + ", expected a finite number");
    }

    FileProblem problem(String what) {
      return FileProblem.at(file, line, what);
    }
  }
}
