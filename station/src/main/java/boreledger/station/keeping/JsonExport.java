package boreledger.station.keeping;

import boreledger.station.ledger.ChainReader;
import boreledger.station.ledger.ChainRow;
import boreledger.station.ledger.LedgerFault;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.Writer;

/** A whole ledger as JSON with its chain, see {@link ExportFormat}. */
final class JsonExport {
  private JsonExport() {}

  /**
   * Writes every entry, and follows the chain on the way.
   *
   * @param ledger the ledger's id
   * @throws LedgerFault if the ledger cannot be read or its chain is broken
   */
  static void write(ChainReader chain, String ledger, Writer out, Progress progress)
      throws LedgerFault, IOException {
    JsonGenerator json = new JsonFactory().createGenerator(out);
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.setPrettyPrinter(new EntryPerLine());
    json.writeStartObject();
    json.writeStringField(ExportFormat.FORMAT, ExportFormat.NAME);
    json.writeStringField(ExportFormat.LEDGER, ledger);
    json.writeNumberField(ExportFormat.ENTRIES, chain.entries());
    json.writeStringField(ExportFormat.HEAD, chain.headHash().toHex());
    json.writeArrayFieldStart(ExportFormat.CHAIN);
    chain.follow(
        row -> {
          write(json, row);
          progress.passed(row.seq());
        });
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.flush();
  }

  private static void write(JsonGenerator json, ChainRow row) throws IOException {
    json.writeStartObject();
    json.writeNumberField(ExportFormat.SEQ, row.seq());
    json.writeStringField(ExportFormat.HASH, row.hash().toHex());
    json.writeStringField(ExportFormat.BODY, row.body());
    json.writeEndObject();
  }

  /** Each entry on a line of its own, for those who look with their eyes. */
  private static final class EntryPerLine extends MinimalPrettyPrinter {
    private static final long serialVersionUID = 1L;

    @Override
    public void beforeArrayValues(JsonGenerator json) throws IOException {
      json.writeRaw('\n');
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
      json.writeRaw(",\n");
    }
  }
}
