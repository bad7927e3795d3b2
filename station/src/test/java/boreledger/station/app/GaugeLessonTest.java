package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.Reads;
import boreledger.station.app.LessonEvent.Arrived;
import boreledger.station.app.LessonEvent.AwaitsPress;
import boreledger.station.app.LessonEvent.Because;
import boreledger.station.app.LessonEvent.Broke;
import boreledger.station.app.LessonEvent.Listening;
import boreledger.station.app.LessonEvent.NeverPauses;
import boreledger.station.app.LessonEvent.Told;
import boreledger.station.session.SmallGauge;
import java.math.BigDecimal;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A gauge at a pseudo-terminal, and a person who shows it values. */
@Timeout(120)
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo-terminals made by socat")
class GaugeLessonTest {
  private static final Duration LONG = Duration.ofMinutes(5);

  @TempDir Path folder;
  private final BlockingQueue<LessonEvent> events = new LinkedBlockingQueue<>();
  private Pty pty;
  private GaugeLesson lesson;

  @AfterEach
  void pullTheCable() {
    if (lesson != null) {
      lesson.close();
    }
    if (pty != null) {
      pty.close();
    }
  }

  @Test
  void aWholeLearningEndsCertainWithAProfileThatUnderstandsTheGauge() throws Exception {
    begin(LONG);

    Told told = next(Told.class);
    int presses = 0;
    while (!told.learned().certain() && presses < 9) {
      String mm = told.learned().next().mm().toPlainString();
      presses++;
      pty.send("V " + signed(mm) + "\r\n");
      next(Arrived.class);
      lesson.shows(value(mm));
      told = next(Told.class);
    }

    assertTrue(told.learned().certain(), told::toString);
    assertEquals(presses, told.shown().size());
    Path file = folder.resolve("mine.gauge.toml");
    new LearnedProfile(told.learned().candidates().get(0).profile())
        .named("Old \"faithful\"")
        .reading(Reads.SIZE)
        .withMaxError(new BigDecimal("0.004"))
        .write(file);
    GaugeProfile profile = GaugeProfiles.read(file);
    assertEquals("Old faithful", profile.name());
    assertEquals(Reads.SIZE, profile.reads());
    assertEquals(0.004, profile.maxErrorMm());
    assertEquals(List.of(file, folder.resolve("port")), files());
  }

  @Test
  void thePressMayComeAfterTheValueAsWell() throws Exception {
    begin(LONG);
    next(Told.class);

    lesson.shows(value("0.000"));
    assertEquals(value("0.000"), next(AwaitsPress.class).shown());
    pty.send("+0.000\r\n");

    assertEquals(List.of(value("0.000")), next(Told.class).shown());
  }

  @Test
  void ofSeveralPressesTheLastCounts() throws Exception {
    begin(LONG);
    next(Told.class);
    show("+0.000\r\n", "0.000");
    pty.send("+4.000\r\n");
    next(Arrived.class);
    TimeUnit.MILLISECONDS.sleep(700); // The line's own pause between two presses.
    show("+5.000\r\n", "5.000");
    Told told = show("+1.000\r\n", "1.000");

    assertEquals(1, told.learned().candidates().size(), told::toString);
  }

  @Test
  void bytesAreToldAsTheyCome() throws Exception {
    begin(LONG);
    next(Told.class);

    pty.send("+1.2");
    assertEquals("2b312e32", next(Arrived.class).hex());
    pty.send("\r\n");

    Arrived whole = next(Arrived.class);
    assertEquals(new Arrived(1, "2b312e320d0a", "+1.2.."), whole);
  }

  @Test
  void aValueTakenBackIsAskedForAnew() throws Exception {
    begin(LONG);
    next(Told.class);
    show("+0.000\r\n", "0.100");

    lesson.takeBack();

    Told told = next(Told.class);
    assertEquals(List.of(), told.shown());
    assertEquals("0.000", told.learned().next().mm().toPlainString());
  }

  @Test
  void aSilentSettingGivesWayToTheNext() throws Exception {
    begin(Duration.ofMillis(400));
    assertEquals(9600, next(Listening.class).settings().baud());

    Listening second = next(Listening.class);

    assertEquals(19_200, second.settings().baud());
    assertEquals(Because.SILENT, second.because());
  }

  @Test
  void aPersonNeedNotWaitForTheNextSetting() throws Exception {
    begin(LONG);
    next(Told.class);

    lesson.tryNext();

    assertEquals(19_200, next(Listening.class).settings().baud());
  }

  @Test
  void aLineThatNeverPausesIsTold() throws Exception {
    begin(LONG);
    next(Told.class);
    boolean isTold = false;
    for (int i = 0; i < 200 && !isTold; i++) {
      pty.send("+0.000\r\n");
      TimeUnit.MILLISECONDS.sleep(50); // The pace of a gauge that sends all the time.
      isTold = events.stream().anyMatch(NeverPauses.class::isInstance);
    }
    assertTrue(isTold);
  }

  @Test
  void itCanBeStoppedAtAnyMomentAndThePortIsFreeForTheNext() throws Exception {
    begin(LONG);
    next(Told.class);
    lesson.shows(value("0.000"));
    next(AwaitsPress.class);

    lesson.close();
    events.clear();
    lesson = GaugeLesson.atPort(pty.port(), LONG, events::add);

    assertEquals(List.of(), next(Told.class).shown());
    assertEquals(List.of(folder.resolve("port")), files());
  }

  @Test
  void aPulledCableAndAPortThatIsNotThereAreToldInOneLine() throws Exception {
    begin(LONG);
    next(Told.class);
    pty.close();
    assertTrue(next(Broke.class).why().contains(pty.port()));

    lesson = GaugeLesson.atPort(folder.resolve("none").toString(), LONG, events::add);
    String why = next(Broke.class).why();
    assertTrue(why.contains("none") && !why.contains("\n"), why);
    assertThrows(UsageProblem.class, () -> GaugeLesson.atPort("tcp://nowhere", LONG, events::add));
  }

  @Test
  void aRecordingIsLearnedValueByValue() throws Exception {
    Path capture =
        new BenchFolder(folder)
            .capture(
                "shown.capture.jsonl",
                BenchFolder.boreHeader("none.gauge.toml"),
                List.of("+0.000", "+5.000", "-2.345"));
    lesson = GaugeLesson.ofRecording(capture, events::add);
    assertEquals("+0.000.", next(Arrived.class).text());
    next(Told.class);
    lesson.shows(value("0"));
    lesson.shows(value("5,000"));
    next(Told.class);
    assertFalse(next(Told.class).learned().certain(), "three presses, two values");

    lesson.shows(value("-2.345"));

    assertTrue(next(Told.class).learned().certain());
    lesson.takeBack();
    assertFalse(next(Told.class).learned().certain());
  }

  @Test
  void aProfileThatIsThereIsLeftAloneAndNothingHalfWrittenStays() throws Exception {
    Path file = Files.writeString(folder.resolve("mine.gauge.toml"), "precious");
    LearnedProfile broken = new LearnedProfile("format = \"boreledger-gauge/1\"\n");

    assertThrows(FileProblem.class, () -> broken.write(folder.resolve("other.gauge.toml")));
    assertThrows(
        FileAlreadyExistsException.class,
        () -> new LearnedProfile(SmallGauge.deviation().text()).write(file));

    assertEquals("precious", Files.readString(file));
    assertEquals(List.of(file), files());
  }

  private void begin(Duration patience) throws UsageProblem {
    pty = Pty.in(folder);
    lesson = GaugeLesson.atPort(pty.port(), patience, events::add);
  }

  private Told show(String sent, String mm) throws InterruptedException {
    pty.send(sent);
    next(Arrived.class);
    lesson.shows(value(mm));
    return next(Told.class);
  }

  /** The next event of a kind; others are passed over. */
  private <T extends LessonEvent> T next(Class<T> kind) throws InterruptedException {
    LessonEvent event = events.poll(30, TimeUnit.SECONDS);
    while (event != null && !kind.isInstance(event)) {
      event = events.poll(30, TimeUnit.SECONDS);
    }
    return assertInstanceOf(kind, event);
  }

  private List<Path> files() throws Exception {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  private static ShownValue value(String typed) {
    return GaugeLesson.value(typed).orElseThrow();
  }

  private static String signed(String mm) {
    return mm.startsWith("-") ? mm : "+" + mm;
  }
}
