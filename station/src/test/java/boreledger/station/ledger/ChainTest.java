package boreledger.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import boreledger.drivers.line.Bytes;
import boreledger.station.table.ContentHash;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Random;
import org.bouncycastle.crypto.digests.SHA256Digest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /**
   * The hash that everything rests on. FIPS 180-4 leaves its examples to NIST's page "Cryptographic
   * Standards and Guidelines: Examples with Intermediate Values", sheet SHA-256, which has the
   * messages of 24 and 448 bits; the empty message is Len = 0 of SHA256ShortMsg.rsp in NIST's SHA
   * Test Vectors for byte-oriented messages. Digests written from memory, then computed with the
   * shell's {@code sha256sum} as well.
   */
  @ParameterizedTest
  @CsvSource({
    "'', e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
        + " 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
  })
  void sha256IsThatOfTheStandard(String message, String digest) {
    byte[] bytes = message.getBytes(StandardCharsets.US_ASCII);

    assertEquals(digest, Bytes.of(Chain.sha256().digest(bytes)).toHex());
    assertEquals(digest, ContentHash.of(message));
  }

  /**
   * Every length around the borders of SHA-256's blocks of 64 bytes, against Bouncy Castle's own
   * implementation, which shares no code with the platform's.
   */
  @Test
  void sha256IsThatOfAnotherLibraryAtEveryLengthAroundItsBlocks() {
    Random random = new Random(180_4);
    for (int length = 0; length <= 3 * 64 + 1; length++) {
      byte[] bytes = new byte[length];
      random.nextBytes(bytes);
      SHA256Digest other = new SHA256Digest();
      other.update(bytes, 0, length);
      byte[] digest = new byte[32];
      other.doFinal(digest, 0);

      assertEquals(Bytes.of(digest), Bytes.of(Chain.sha256().digest(bytes)), "length " + length);
    }
  }

  /** The vectors above, which were written from memory: a slip of memory would show here. */
  @ParameterizedTest
  @ValueSource(strings = {"", "abc", "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"})
  void anotherLibraryGivesTheSameVectors(String message) {
    SHA256Digest other = new SHA256Digest();
    byte[] bytes = message.getBytes(StandardCharsets.US_ASCII);
    other.update(bytes, 0, bytes.length);
    byte[] digest = new byte[32];
    other.doFinal(digest, 0);

    assertEquals(Bytes.of(digest).toHex(), ContentHash.of(message));
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
