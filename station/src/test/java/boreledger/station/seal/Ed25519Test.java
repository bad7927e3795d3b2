package boreledger.station.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Random;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;
import org.bouncycastle.crypto.signers.Ed25519Signer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The first three test vectors of RFC 8032, section 7.1, written here from memory; a slip in them
 * could not verify. Keys, signatures and verdicts are also held against Bouncy Castle's own
 * implementation, which shares no code with the platform's.
 */
class Ed25519Test {
  // RFC 8410: what a PKCS#8 key of Ed25519 begins with.
  private static final String PKCS8 = "302e020100300506032b657004220420";

  @ParameterizedTest
  @CsvSource({
    "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,"
        + "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
        + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555"
        + "fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,"
        + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
        + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da0"
        + "85ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7,"
        + "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025,af82,"
        + "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac1"
        + "8ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"
  })
  void aVectorOfTheStandardIsSignedAndVerifiedAsItSays(
      String secret, String open, String message, String signature) throws Exception {
    PrivateKey key = key(secret);

    Ed25519PrivateKeyParameters other = other(secret);
    assertEquals(open, Bytes.of(other.generatePublicKey().getEncoded()).toHex());
    assertEquals(signature, Bytes.of(signedElsewhere(other, Bytes.ofHex(message))).toHex());
    assertEquals(signature, Ed25519.sign(key, Bytes.ofHex(message)).toHex());
    assertTrue(Ed25519.isBy(Bytes.ofHex(open), Bytes.ofHex(message), Bytes.ofHex(signature)));
    assertFalse(
        Ed25519.isBy(Bytes.ofHex(open), Bytes.ofHex(message + "00"), Bytes.ofHex(signature)));
  }

  @Test
  void bytesThatAreNoKeyAndNoSignatureVerifyNothing() {
    assertFalse(Ed25519.isBy(Bytes.EMPTY, Bytes.EMPTY, Bytes.EMPTY));
    assertFalse(Ed25519.isBy(Bytes.of(new byte[32]), Bytes.EMPTY, Bytes.of(new byte[63])));
  }

  @Test
  void twoLibrariesSignAlikeAndVerifyWhatTheOtherSigned() throws Exception {
    Random random = new Random(8032);
    for (int i = 0; i < 40; i++) {
      byte[] secret = new byte[32];
      byte[] message = new byte[i * 5];
      random.nextBytes(secret);
      random.nextBytes(message);
      Ed25519PrivateKeyParameters other = other(Bytes.of(secret).toHex());
      Bytes open = Bytes.of(other.generatePublicKey().getEncoded());

      Bytes here = Ed25519.sign(key(Bytes.of(secret).toHex()), Bytes.of(message));

      assertEquals(Bytes.of(signedElsewhere(other, Bytes.of(message))), here, "message " + i);
      assertTrue(Ed25519.isBy(open, Bytes.of(message), here), "message " + i);
      byte[] bent = here.toArray();
      bent[random.nextInt(bent.length)] ^= (byte) (1 << random.nextInt(8));
      assertFalse(Ed25519.isBy(open, Bytes.of(message), Bytes.of(bent)), "message " + i);
      assertFalse(verifiedElsewhere(other, message, bent), "message " + i);
    }
  }

  private static PrivateKey key(String secret) throws Exception {
    return KeyFactory.getInstance("Ed25519")
        .generatePrivate(new PKCS8EncodedKeySpec(Bytes.ofHex(PKCS8 + secret).toArray()));
  }

  private static Ed25519PrivateKeyParameters other(String secret) {
    return new Ed25519PrivateKeyParameters(Bytes.ofHex(secret).toArray(), 0);
  }

  private static byte[] signedElsewhere(Ed25519PrivateKeyParameters key, Bytes message) {
    Ed25519Signer signer = new Ed25519Signer();
    signer.init(true, key);
    signer.update(message.toArray(), 0, message.toArray().length);
    return signer.generateSignature();
  }

  private static boolean verifiedElsewhere(
      Ed25519PrivateKeyParameters key, byte[] message, byte[] signature) {
    Ed25519Signer signer = new Ed25519Signer();
    signer.init(false, key.generatePublicKey());
    signer.update(message, 0, message.length);
    return signer.verifySignature(signature);
  }
}
