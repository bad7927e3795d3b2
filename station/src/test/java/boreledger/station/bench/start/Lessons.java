package boreledger.station.bench.start;

import boreledger.station.app.BenchFolder;
import boreledger.station.bench.lesson.LessonModel;
import boreledger.station.bench.lesson.LessonSource;
import java.nio.file.Path;
import java.util.List;

/** Lessons at different moments, from a recording of an invented gauge. */
public final class Lessons {
  private Lessons() {}

  /** The first moment, and nothing is named yet. */
  public static void atFirst(StartModel model) {
    model.teach();
    model.lesson().begin();
  }

  /** Two values were shown, and the next one typed is none. */
  public static void halfWay(StartModel model, Path folder) {
    LessonModel lesson = begin(model, folder);
    show(lesson, "0.000", "5.000", "warm");
  }

  /** It is certain, and what is to be written is refused. */
  public static void certain(StartModel model, Path folder) {
    LessonModel lesson = begin(model, folder);
    show(lesson, "0.000", "5.000", "-2.345");
    lesson.keep().maxError().set("plenty");
    lesson.keep().file().set("");
    lesson.keep().write();
  }

  private static LessonModel begin(StartModel model, Path folder) {
    Path recording =
        new BenchFolder(folder)
            .capture(
                "shown.capture.jsonl",
                BenchFolder.boreHeader("none.gauge.toml"),
                List.of("A +0.000 mm", "A +5.000 mm", "A -2.345 mm"));
    model.teach();
    LessonModel lesson = model.lesson();
    lesson.source().kind().set(LessonSource.Kind.RECORDING);
    lesson.source().recording().set(recording.toString());
    lesson.begin();
    return lesson;
  }

  private static void show(LessonModel lesson, String... values) {
    for (String value : values) {
      lesson.typed().set(value);
      lesson.show();
    }
  }
}
