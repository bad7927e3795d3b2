package boreledger.station.seal;

import boreledger.drivers.line.Bytes;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;

/** Ed25519 as RFC 8032 defines it, by the Java platform; public keys as their 32 bytes. */
final class Ed25519 {
  static final String ALGORITHM = "Ed25519";
  static final int KEY_BYTES = 32;
  static final int SIGNATURE_BYTES = 64;

  // RFC 8410: what a SubjectPublicKeyInfo of an Ed25519 key begins with.
  private static final Bytes PREFIX = Bytes.ofHex("302a300506032b6570032100");

  private Ed25519() {}

  static Bytes raw(PublicKey key) {
    Bytes encoded = Bytes.of(key.getEncoded());
    return encoded.slice(PREFIX.size(), encoded.size());
  }

  static Bytes sign(PrivateKey key, Bytes message) throws GeneralSecurityException {
    Signature signature = Signature.getInstance(ALGORITHM);
    signature.initSign(key);
    signature.update(message.toArray());
    return Bytes.of(signature.sign());
  }

  /** Whether a signature is by that key; false for bytes that are no key or no signature. */
  static boolean isBy(Bytes rawKey, Bytes message, Bytes signature) {
    try {
      Signature verifying = Signature.getInstance(ALGORITHM);
      verifying.initVerify(
          KeyFactory.getInstance(ALGORITHM)
              .generatePublic(new X509EncodedKeySpec(PREFIX.plus(rawKey).toArray())));
      verifying.update(message.toArray());
      return verifying.verify(signature.toArray());
    } catch (GeneralSecurityException e) {
      return false;
    }
  }
}
