package boreledger.station.seal;

import boreledger.drivers.line.Bytes;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Optional;
import java.util.Set;

/**
 * A key in a file: a private key (PKCS#8, encrypted when there is a passphrase) and its public key,
 * as two PEM blocks. Only its owner may read the file.
 */
public final class KeyFile {
  private static final String OPEN = "PUBLIC KEY";
  private static final String SECRET = "PRIVATE KEY";
  private static final String CLOSED = "ENCRYPTED PRIVATE KEY";
  private static final String OWNER_ONLY = "rw-------";

  private final Path path;

  /** A key file, which need not be there yet. */
  public KeyFile(Path path) {
    this.path = path;
  }

  /** The person's own key, in the folder where programs keep their settings. */
  public static KeyFile own() {
    String settings = System.getenv("XDG_CONFIG_HOME");
    Path folder =
        settings == null || settings.isBlank()
            ? Path.of(System.getProperty("user.home"), ".config")
            : Path.of(settings);
    return new KeyFile(folder.resolve("boreledger").resolve("seal-key.pem"));
  }

  /** Where it is. */
  public Path path() {
    return path;
  }

  /** Whether it is there. */
  public boolean exists() {
    return Files.exists(path);
  }

  /**
   * Makes a new key.
   *
   * @param passphrase null for none
   * @throws KeyProblem if it cannot be written
   */
  public SealKey make(char[] passphrase) throws KeyProblem {
    try {
      KeyPair pair = SealKey.newPair();
      byte[] pkcs8 = pair.getPrivate().getEncoded();
      String secret =
          passphrase == null
              ? Pem.block(SECRET, Bytes.of(pkcs8))
              : Pem.block(CLOSED, SecretBox.close(pkcs8, passphrase));
      write(secret + Pem.block(OPEN, Bytes.of(pair.getPublic().getEncoded())));
      return new SealKey(pair.getPrivate(), Ed25519.raw(pair.getPublic()));
    } catch (IOException | GeneralSecurityException e) {
      throw new KeyProblem(path + ": the new key could not be written: " + reason(e), e);
    }
  }

  /**
   * Reads the key.
   *
   * @param passphrase null for none
   * @throws KeyProblem if there is none, or the passphrase is missing or wrong
   */
  public SealKey read(char[] passphrase) throws KeyProblem {
    String text = text();
    try {
      PrivateKey secret =
          KeyFactory.getInstance(Ed25519.ALGORITHM)
              .generatePrivate(new PKCS8EncodedKeySpec(pkcs8(text, passphrase)));
      SealKey key = new SealKey(secret, open(text));
      if (!key.fits()) {
        throw new KeyProblem(path + ": its private and its public key do not belong together");
      }
      return key;
    } catch (IOException | GeneralSecurityException | IllegalArgumentException e) {
      throw new KeyProblem(path + ": the key could not be read: " + reason(e), e);
    }
  }

  /**
   * Reads the public key alone, which needs no passphrase.
   *
   * @throws KeyProblem if there is none
   */
  public Bytes readOpen() throws KeyProblem {
    String text = text();
    try {
      return open(text);
    } catch (GeneralSecurityException | IllegalArgumentException e) {
      throw new KeyProblem(path + ": the public key could not be read: " + reason(e), e);
    }
  }

  private Bytes open(String text) throws KeyProblem, GeneralSecurityException {
    Optional<Bytes> encoded = Pem.find(OPEN, text);
    if (encoded.isEmpty()) {
      throw new KeyProblem(path + ": has no block " + OPEN);
    }
    return Ed25519.raw(
        KeyFactory.getInstance(Ed25519.ALGORITHM)
            .generatePublic(new X509EncodedKeySpec(encoded.get().toArray())));
  }

  private byte[] pkcs8(String text, char[] passphrase)
      throws KeyProblem, GeneralSecurityException, IOException {
    Optional<Bytes> plain = Pem.find(SECRET, text);
    if (plain.isPresent() && passphrase != null) {
      throw new KeyProblem(path + ": the key has no passphrase; leave --passphrase-file out");
    }
    if (plain.isPresent()) {
      return plain.get().toArray();
    }
    Optional<Bytes> closed = Pem.find(CLOSED, text);
    if (closed.isEmpty()) {
      throw new KeyProblem(path + ": holds no private key; name the key file of whoever seals");
    }
    if (passphrase == null) {
      throw new KeyProblem(
          path + ": the key has a passphrase; name the file it stands in with --passphrase-file");
    }
    try {
      return SecretBox.open(closed.get(), passphrase);
    } catch (GeneralSecurityException e) {
      throw new KeyProblem(path + ": the passphrase does not open the key", e);
    }
  }

  private String text() throws KeyProblem {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new KeyProblem(path + ": the key could not be read: " + reason(e), e);
    }
  }

  private void write(String text) throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    boolean posix = Files.getFileStore(folder).supportsFileAttributeView("posix");
    FileAttribute<?>[] ownerOnly =
        posix
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(OWNER_ONLY))
            }
            : new FileAttribute<?>[0];
    // Created with its permissions, so that it is never open to others, not even for a moment.
    try (var out =
        Files.newByteChannel(
            path, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownerOnly)) {
      out.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII)));
    }
  }

  private static String reason(Exception e) {
    return e.getClass().getSimpleName() + " " + e.getMessage();
  }
}
