package boreledger.station.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.seal.Seal.NoSeal;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SealTest {
  private static final Instant TIME = Instant.parse("2031-05-06T08:00:00.75Z");
  private static final String LEDGER = "00112233445566778899aabbccddeeff";

  @TempDir Path folder;
  private Seal seal;

  @BeforeEach
  void sign() throws Exception {
    SealKey key = new KeyFile(folder.resolve("key.pem")).make(null);
    seal = key.seal(LEDGER, 51, Bytes.of(new byte[32]), TIME, "A. Turner");
  }

  @Test
  void aSealReadBackFromItsFileItsLineOrALedgerIsTheSame() throws Exception {
    assertEquals(seal, Seal.parse(seal.text()));
    assertEquals(seal, Seal.parse(seal.line()));
    assertEquals(seal, Seal.of(seal.kept()));
    assertTrue(seal.isGenuine());
  }

  @Test
  void aSealStandsInEightLines() {
    assertEquals(
        "boreledger-seal/1\nledger "
            + LEDGER
            + "\nentry 51\nhead "
            + "00".repeat(32)
            + "\ntime 2031-05-06T08:00:00Z\nname A. Turner\nkey "
            + seal.keyText()
            + "\nsignature "
            + Seal.base64(seal.signature())
            + "\n",
        seal.text());
  }

  @Test
  void theLongestLineFitsASquareCodeOfVersionFifteen() throws Exception {
    // ISO/IEC 18004, byte mode, error correction M: version 15 holds 412 bytes. From memory.
    SealKey key = new KeyFile(folder.resolve("other.pem")).make(null);
    String name = "x".repeat(Seal.LONGEST_NAME);
    Seal longest = key.seal(LEDGER, 999_999_999, Bytes.of(new byte[32]), TIME, name);

    assertTrue(longest.line().length() <= 412, longest.line());
    assertEquals(longest, Seal.parse(longest.line()));
  }

  @Test
  void everyChangedCharacterOfItsTextShows() {
    String text = seal.text();
    int tried = 0;
    for (int i = 0; i < text.length() - 1; i++) {
      char other = text.charAt(i) == 'A' ? 'B' : 'A';
      String changed = text.substring(0, i) + other + text.substring(i + 1);
      assertFalse(isTaken(changed), () -> "taken: " + changed);
      tried++;
    }
    assertTrue(tried > 300, tried + " characters");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "boreledger-seal/2",
        "boreledger-seal/1\nledger 00\n",
        "boreledger-seal/1 00 x"
      })
  void whatIsNoSealIsRefused(String text) {
    assertThrows(NoSeal.class, () -> Seal.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " A", "A ", "A\nB", "A\u2028B", "A\u0000"})
  void whatCannotBeANameInOneLineIsNone(String name) {
    assertFalse(Seal.isName(name));
  }

  @Test
  void aNameOfEightyCharactersIsOneAndOfEightyOneIsNone() {
    assertTrue(Seal.isName("é".repeat(80)));
    assertFalse(Seal.isName("é".repeat(81)));
  }

  /**
   * Whether another text passes for a genuine seal. Base64 ends in bits without meaning, so that
   * two texts can stand for the same signature.
   */
  private boolean isTaken(String text) {
    try {
      Seal read = Seal.parse(text);
      return read.isGenuine() && !read.equals(seal);
    } catch (NoSeal e) {
      return false;
    }
  }
}
