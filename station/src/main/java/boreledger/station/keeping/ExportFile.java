package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.Chain;
import boreledger.station.ledger.ChainRow;
import boreledger.station.ledger.LedgerFault;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads an export of a ledger, see {@link ExportFormat}. Memory does not grow with the file. */
final class ExportFile implements AutoCloseable {
  private final Path file;
  private final JsonParser json;
  private final Header header;

  /** What the file says of itself; {@link #follow} finds out whether it is true. */
  record Header(String ledger, long entries, String head) {}

  private ExportFile(Path file, JsonParser json) throws IOException, FileProblem {
    this.file = file;
    this.json = json;
    this.header = header();
  }

  /** Opens a file and reads its header. */
  static ExportFile open(Path file) throws FileProblem {
    JsonParser json = null;
    try {
      json = new JsonFactory().createParser(Files.newInputStream(file));
      return new ExportFile(file, json);
    } catch (NoSuchFileException e) {
      throw FileProblem.of(file.toString(), "there is no such file", e);
    } catch (IOException e) {
      throw closeAfter(json, unreadable(file, e));
    } catch (FileProblem e) {
      throw closeAfter(json, e);
    }
  }

  /** What the file says of itself. */
  Header told() {
    return header;
  }

  /** Takes one entry after the other. */
  @FunctionalInterface
  interface Taker {
    /** Takes an entry that follows from those before. */
    void take(ChainRow row) throws FileProblem, LedgerFault;
  }

  /**
   * Reads every entry and follows the chain to the head.
   *
   * @throws FileProblem at the first entry that does not follow, or if the file is not as it must
   */
  void follow(Taker taker) throws FileProblem, LedgerFault {
    try {
      Bytes hash = Chain.ORIGIN;
      long entries = 0;
      while (json.nextToken() != JsonToken.END_ARRAY) {
        ChainRow row = row();
        entries++;
        hash = Chain.link(hash, entries, row.body());
        if (row.seq() != entries || !row.hash().equals(hash)) {
          throw problem("entry " + entries + " does not follow from the one before it");
        }
        taker.take(row);
      }
      expect(json.nextToken(), JsonToken.END_OBJECT, "the end of the object");
      expect(json.nextToken(), null, "the end of the file");
      if (entries != header.entries() || !hash.toHex().equals(header.head())) {
        throw problem("the chain does not end with the entry and the hash that the file names");
      }
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  /** A problem with the place where the reading is. */
  FileProblem problem(String what) {
    return FileProblem.at(file.toString(), json.currentLocation().getLineNr(), what);
  }

  @Override
  public void close() throws FileProblem {
    try {
      json.close();
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  private Header header() throws IOException, FileProblem {
    expect(json.nextToken(), JsonToken.START_OBJECT, "an object");
    String format = text(ExportFormat.FORMAT);
    if (!format.equals(ExportFormat.NAME)) {
      throw problem("format is \"" + format + "\", expected \"" + ExportFormat.NAME + '"');
    }
    Header read =
        new Header(
            text(ExportFormat.LEDGER), number(ExportFormat.ENTRIES), text(ExportFormat.HEAD));
    key(ExportFormat.CHAIN);
    expect(json.nextToken(), JsonToken.START_ARRAY, "a list of entries");
    return read;
  }

  private ChainRow row() throws IOException, FileProblem {
    expect(json.currentToken(), JsonToken.START_OBJECT, "an entry");
    long seq = number(ExportFormat.SEQ);
    String hash = text(ExportFormat.HASH);
    ChainRow row = new ChainRow(seq, text(ExportFormat.BODY), hash(hash));
    expect(json.nextToken(), JsonToken.END_OBJECT, "the end of the entry");
    return row;
  }

  private Bytes hash(String hex) throws FileProblem {
    if (!hex.matches("[0-9a-f]{64}")) {
      throw problem("a hash has 64 hexadecimal digits in lower case");
    }
    return Bytes.ofHex(hex);
  }

  private String text(String key) throws IOException, FileProblem {
    key(key);
    expect(json.nextToken(), JsonToken.VALUE_STRING, "a text for " + key);
    return json.getText();
  }

  private long number(String key) throws IOException, FileProblem {
    key(key);
    expect(json.nextToken(), JsonToken.VALUE_NUMBER_INT, "a whole number for " + key);
    return json.getLongValue();
  }

  private void key(String key) throws IOException, FileProblem {
    if (json.nextToken() != JsonToken.FIELD_NAME || !json.currentName().equals(key)) {
      throw problem("expected the key " + key + "; this is no " + ExportFormat.NAME);
    }
  }

  private void expect(JsonToken found, JsonToken expected, String what) throws FileProblem {
    if (found != expected) {
      throw problem("expected " + what + "; this is no " + ExportFormat.NAME);
    }
  }

  private static FileProblem unreadable(Path file, IOException cause) {
    if (cause instanceof JsonProcessingException json && json.getLocation() != null) {
      String what = cause instanceof JsonParseException ? "no JSON here: " : "cannot be read: ";
      return FileProblem.at(
          file.toString(), json.getLocation().getLineNr(), what + json.getOriginalMessage());
    }
    return FileProblem.of(file.toString(), "cannot be read: " + cause.getMessage(), cause);
  }

  private static FileProblem closeAfter(JsonParser json, FileProblem first) {
    try {
      if (json != null) {
        json.close();
      }
    } catch (IOException second) {
      first.addSuppressed(second);
    }
    return first;
  }
}
