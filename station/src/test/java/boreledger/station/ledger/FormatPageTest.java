package boreledger.station.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.Imported;
import boreledger.station.seal.Seal;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page for strangers says what the program does. */
class FormatPageTest {
  private final String page = read();

  @Test
  void theExamplesHashesFollowFromItsBodies() throws Exception {
    Bytes hash = Chain.ORIGIN;
    int entries = 0;
    for (; !find("body   " + (entries + 1)).isEmpty(); entries++) {
      String body = find("body   " + (entries + 1));
      hash = Chain.link(hash, entries + 1, body);
      assertEquals(find("digest " + (entries + 1)), digest(body));
      assertEquals(find("hash   " + (entries + 1)), hash.toHex());
    }
    assertEquals(3, entries);
  }

  @Test
  void theExamplesBodiesAreWhatTheProgramWrites() throws Exception {
    for (int seq = 1; seq <= 3; seq++) {
      String body = find("body   " + seq);
      assertEquals(body, EntryJson.write(EntryJson.readStrictly(seq, body)));
    }
  }

  @Test
  void theExamplesSealIsGenuineAndTheSameInBothPlaces() throws Exception {
    Matcher file =
        Pattern.compile("```text\n(boreledger-seal/1\n.*?)```", Pattern.DOTALL).matcher(page);
    assertTrue(file.find());
    Seal seal = Seal.parse(file.group(1));

    assertTrue(seal.isGenuine());
    assertEquals(file.group(1), seal.text());
    assertEquals(seal.kept(), EntryJson.read(3, find("body   3")));
  }

  @Test
  void theTablesWordsAreThoseOfTheFile() {
    int table = page.indexOf("CREATE TABLE");
    String sql = page.substring(table, page.indexOf("STRICT", table) + "STRICT".length());

    assertEquals(Schema.STATEMENTS.get(0).strip(), sql);
  }

  @Test
  void everyKindOfEntryIsThereWithItsKeysInOrder() {
    JsonSubTypes kinds = EntryBody.class.getAnnotation(JsonSubTypes.class);
    for (JsonSubTypes.Type kind : kinds.value()) {
      String keys =
          Arrays.stream(kind.value().getRecordComponents())
              .map(RecordComponent::getName)
              .map(FormatPageTest::snake)
              .map(key -> "`" + key + "`")
              .collect(Collectors.joining(", "));
      assertTrue(
          page.contains("| `" + kind.name() + "` | " + keys + " |"), kind.name() + ": " + keys);
    }
    assertEquals(18, kinds.value().length);
  }

  @Test
  void whereAnImportedEntryStandsIsWhatThePageSays() {
    assertTrue(page.contains("`opening + 1 + n - first`"));
    List<Entry> imports =
        List.of(
            new Entry(2, new Imported("aa", "", 1, 19, Instant.EPOCH, null), Chain.ORIGIN),
            new Entry(40, new Imported("aa", "", 20, 5, Instant.EPOCH, null), Chain.ORIGIN));

    assertEquals(2 + 1 + 9 - 1, ImportNumbers.of(imports, "aa").own(9));
    assertEquals(40 + 1 + 23 - 20, ImportNumbers.of(imports, "aa").own(23));
  }

  @Test
  void theTriggersAndIndicesAreNamed() {
    List<String> names =
        Schema.STATEMENTS.stream()
            .map(Pattern.compile("CREATE (?:INDEX|TRIGGER) (\\w+)")::matcher)
            .filter(Matcher::find)
            .map(each -> each.group(1))
            .toList();

    assertEquals(5, names.size());
    names.forEach(name -> assertTrue(page.contains("`" + name + "`"), name));
  }

  private String find(String label) {
    return page.lines()
        .filter(line -> line.startsWith(label + " "))
        .map(line -> line.substring(label.length() + 1))
        .findFirst()
        .orElse("");
  }

  private static String digest(String body) throws Exception {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    digest.update((byte) 0);
    return Bytes.of(digest.digest(body.getBytes(StandardCharsets.UTF_8))).toHex();
  }

  private static String snake(String component) {
    return new PropertyNamingStrategies.SnakeCaseStrategy().translate(component);
  }

  private static String read() {
    try {
      return Files.readString(Path.of(System.getProperty("basedir", "."), "FORMAT.md"));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
