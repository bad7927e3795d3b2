package boreledger.station.seal;

import boreledger.drivers.line.Bytes;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** A key that seals. */
public final class SealKey {
  private final PrivateKey secret;
  private final Bytes open;

  SealKey(PrivateKey secret, Bytes open) {
    this.secret = secret;
    this.open = open;
  }

  static KeyPair newPair() throws GeneralSecurityException {
    return KeyPairGenerator.getInstance(Ed25519.ALGORITHM).generateKeyPair();
  }

  /** The public key, 32 bytes. */
  public Bytes open() {
    return open;
  }

  /** Signs a ledger's head. */
  public Seal seal(String ledger, long entry, Bytes head, Instant time, String name) {
    Seal unsigned =
        new Seal(
            ledger, entry, head, time.truncatedTo(ChronoUnit.SECONDS), name, open, Bytes.EMPTY);
    try {
      return unsigned.signed(Ed25519.sign(secret, unsigned.signedBytes()));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("the key was tried when it was read", e);
    }
  }

  /** Whether the private and the public part belong together. */
  boolean fits() throws GeneralSecurityException {
    Bytes message = Bytes.of(new byte[Ed25519.KEY_BYTES]);
    return Ed25519.isBy(open, message, Ed25519.sign(secret, message));
  }
}
