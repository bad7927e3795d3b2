package boreledger.station.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class KeyFileTest {
  private static final char[] WORDS = "a passphrase of several words".toCharArray();

  @TempDir Path folder;
  private Path path;
  private KeyFile file;

  @BeforeEach
  void nameTheFile() {
    path = folder.resolve("deep/er/key.pem");
    file = new KeyFile(path);
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no such permissions")
  void onlyItsOwnerMayReadIt() throws Exception {
    file.make(null);

    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(path)));
  }

  @Test
  void aKeyReadBackIsTheOneMade() throws Exception {
    SealKey made = file.make(null);

    assertEquals(made.open(), file.read(null).open());
    assertEquals(made.open(), file.readOpen());
  }

  @Test
  void aKeyWithAPassphraseIsReadWithItAlone() throws Exception {
    SealKey made = file.make(WORDS);

    assertFalse(Files.readString(path).contains("BEGIN PRIVATE KEY"));
    assertEquals(made.open(), file.read(WORDS).open());
    assertEquals(made.open(), file.readOpen());
    refused(": the key has a passphrase; name the file it stands in with --passphrase-file", null);
    refused(": the passphrase does not open the key", "another".toCharArray());
  }

  @Test
  void aPassphraseForAKeyThatHasNoneIsRefused() throws Exception {
    file.make(null);

    refused(": the key has no passphrase; leave --passphrase-file out", WORDS);
  }

  @Test
  void aKeyThatIsThereIsNotOverwritten() throws Exception {
    SealKey made = file.make(null);

    assertThrows(KeyProblem.class, () -> file.make(null));
    assertEquals(made.open(), file.readOpen());
  }

  @Test
  void twoHalvesOfDifferentKeysAreRefused() throws Exception {
    file.make(null);
    KeyFile other = new KeyFile(folder.resolve("other.pem"));
    other.make(null);
    String secret = Files.readString(path).split("-----BEGIN PUBLIC")[0];
    String open = Files.readString(other.path()).split("-----END PRIVATE KEY-----\n")[1];
    Files.writeString(path, secret + open);

    refused(": its private and its public key do not belong together", null);
  }

  @Test
  void aPublicKeyAloneCannotSeal() throws Exception {
    file.make(null);
    String open = Files.readString(path).split("-----END PRIVATE KEY-----\n")[1];
    Files.writeString(path, open);

    refused(": holds no private key; name the key file of whoever seals", null);
    assertTrue(file.readOpen().size() == 32);
  }

  private void refused(String what, char[] passphrase) {
    KeyProblem problem = assertThrows(KeyProblem.class, () -> file.read(passphrase));
    assertEquals(path + what, problem.getMessage());
  }
}
