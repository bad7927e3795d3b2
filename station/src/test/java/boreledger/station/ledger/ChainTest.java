package boreledger.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import boreledger.drivers.line.Bytes;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.junit.jupiter.api.Test;

class ChainTest {
  /**
   * Computed outside Java, with the shell's {@code sha256sum} over the bytes that the package's
   * page lays down: entry 1 with the body {@code abc}.
   */
  @Test
  void linkOfTheFirstEntryIsWhatAShellComputes() {
    assertEquals(
        "0a9b9ee97231de90b35b3bf1e06758161c73c78a5cdc8c5af90bada53a115395",
        Chain.link(Chain.ORIGIN, 1, "abc").toHex());
  }

  @Test
  void linkIsTheDocumentedBytesHashedStepByStep() throws Exception {
    Bytes previous = Chain.link(Chain.ORIGIN, 1, "{}");
    String body = "{\"kind\":\"ledger\",\"name\":\"Größe\"}";

    byte[] digest =
        sha256(
            bytes(
                out -> {
                  out.writeByte(0);
                  out.write(body.getBytes(StandardCharsets.UTF_8));
                }));
    byte[] link =
        sha256(
            bytes(
                out -> {
                  out.writeByte(1);
                  out.write(previous.toArray());
                  out.writeLong(2);
                  out.write(digest);
                }));

    assertEquals(Bytes.of(link), Chain.link(previous, 2, body));
  }

  @Test
  void linkChangesWithEachOfItsThreeParts() {
    Bytes link = Chain.link(Chain.ORIGIN, 1, "abc");

    assertNotEquals(link, Chain.link(Chain.ORIGIN, 1, "abd"));
    assertNotEquals(link, Chain.link(Chain.ORIGIN, 2, "abc"));
    assertNotEquals(link, Chain.link(link, 1, "abc"));
  }

  private static byte[] sha256(byte[] content) throws NoSuchAlgorithmException {
    return MessageDigest.getInstance("SHA-256").digest(content);
  }

  private static byte[] bytes(Writing writing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writing.to(new DataOutputStream(bytes));
    return bytes.toByteArray();
  }

  private interface Writing {
    void to(DataOutputStream out) throws IOException;
  }
}
