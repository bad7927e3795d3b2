package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HexFormat;

/**
 * Follows a ledger's hash chain from its documented bytes alone: {@code SHA-256(01 || previous ||
 * number || SHA-256(00 || body))}.
 */
final class ChainCheck {
  private ChainCheck() {}

  /** Fails at the first entry that does not follow; answers how many there are. */
  static long entriesOf(Path ledger) {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + ledger);
        ResultSet row =
            connection
                .createStatement()
                .executeQuery("SELECT seq, body, hash FROM entry ORDER BY seq")) {
      byte[] previous = new byte[32];
      long entries = 0;
      while (row.next()) {
        entries++;
        assertEquals(entries, row.getLong(1), "numbers without gaps");
        byte[] expected = link(previous, entries, row.getString(2));
        assertArrayEquals(expected, row.getBytes(3), "entry " + entries);
        previous = expected;
      }
      return entries;
    } catch (SQLException e) {
      throw new AssertionError(ledger.toString(), e);
    }
  }

  /** The same for an export of the format 1; answers how many entries there are. */
  static long entriesOf(JsonNode export) {
    assertEquals("boreledger-export/1", export.path("format").asText());
    byte[] previous = new byte[32];
    long entries = 0;
    for (JsonNode entry : export.path("chain")) {
      entries++;
      assertEquals(entries, entry.path("seq").asLong(), "numbers without gaps");
      previous = link(previous, entries, entry.path("body").asText());
      assertEquals(
          HexFormat.of().formatHex(previous), entry.path("hash").asText(), "entry " + entries);
    }
    assertEquals(entries, export.path("entries").asLong());
    assertEquals(HexFormat.of().formatHex(previous), export.path("head").asText());
    return entries;
  }

  private static byte[] link(byte[] previous, long number, String body) {
    byte[] text = body.getBytes(StandardCharsets.UTF_8);
    byte[] digest = sha256(ByteBuffer.allocate(1 + text.length).put((byte) 0).put(text).array());
    return sha256(
        ByteBuffer.allocate(1 + 32 + 8 + 32)
            .put((byte) 1)
            .put(previous)
            .putLong(number)
            .put(digest)
            .array());
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }
}
