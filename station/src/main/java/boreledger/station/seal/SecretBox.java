package boreledger.station.seal;

import boreledger.drivers.line.Bytes;
import java.io.IOException;
import java.security.AlgorithmParameters;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.SecureRandom;
import javax.crypto.Cipher;
import javax.crypto.EncryptedPrivateKeyInfo;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.PBEParameterSpec;

/** A private key under a passphrase: PBES2 of RFC 8018 with PBKDF2, HMAC-SHA-256 and AES-256. */
final class SecretBox {
  private static final String SCHEME = "PBEWithHmacSHA256AndAES_256";
  private static final int ITERATIONS = 600_000;
  private static final int BLOCK_BYTES = 16;

  private SecretBox() {}

  /** Closes a PKCS#8 key into an encrypted PKCS#8 key. */
  static Bytes close(byte[] pkcs8, char[] passphrase) throws GeneralSecurityException, IOException {
    SecureRandom random = new SecureRandom();
    byte[] salt = new byte[BLOCK_BYTES];
    random.nextBytes(salt);
    byte[] iv = new byte[BLOCK_BYTES];
    random.nextBytes(iv);
    Cipher cipher = Cipher.getInstance(SCHEME);
    cipher.init(
        Cipher.ENCRYPT_MODE,
        key(SCHEME, passphrase),
        new PBEParameterSpec(salt, ITERATIONS, new IvParameterSpec(iv)));
    byte[] closed = cipher.doFinal(pkcs8);
    // Only by the name of the whole scheme does the platform know its parameters' object
    // identifier.
    AlgorithmParameters parameters = AlgorithmParameters.getInstance("PBES2");
    parameters.init(cipher.getParameters().getEncoded());
    return Bytes.of(new EncryptedPrivateKeyInfo(parameters, closed).getEncoded());
  }

  /** Opens it again. */
  static byte[] open(Bytes closed, char[] passphrase) throws GeneralSecurityException, IOException {
    EncryptedPrivateKeyInfo info = new EncryptedPrivateKeyInfo(closed.toArray());
    // The scheme's full name is what the parameters call themselves; their class knows "PBES2".
    String scheme = info.getAlgParameters().toString();
    Cipher cipher = Cipher.getInstance(scheme);
    cipher.init(Cipher.DECRYPT_MODE, key(scheme, passphrase), info.getAlgParameters());
    return cipher.doFinal(info.getEncryptedData());
  }

  private static Key key(String scheme, char[] passphrase) throws GeneralSecurityException {
    return SecretKeyFactory.getInstance(scheme).generateSecret(new PBEKeySpec(passphrase));
  }
}
