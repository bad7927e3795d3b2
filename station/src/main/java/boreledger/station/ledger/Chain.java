package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The hash chain over entries, exactly as the package's page lays down its bytes. */
public final class Chain {
  /** What the first entry is chained to: 32 bytes of zero. */
  public static final Bytes ORIGIN = Bytes.of(new byte[32]);

  private static final byte BODY = 0;
  private static final byte LINK = 1;

  private Chain() {}

  /** The hash of entry {@code seq}, given its body and the hash of the entry before it. */
  public static Bytes link(Bytes previousHash, long seq, String body) {
    return link(previousHash, seq, Bytes.of(body.getBytes(StandardCharsets.UTF_8)));
  }

  /** The same for a body given by its bytes. */
  static Bytes link(Bytes previousHash, long seq, Bytes body) {
    MessageDigest digest = sha256();
    digest.update(BODY);
    byte[] bodyDigest = digest.digest(body.toArray());
    digest.update(LINK);
    digest.update(previousHash.toArray());
    digest.update(ByteBuffer.allocate(Long.BYTES).putLong(seq).array());
    return Bytes.of(digest.digest(bodyDigest));
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
