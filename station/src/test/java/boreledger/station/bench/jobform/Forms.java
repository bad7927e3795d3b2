package boreledger.station.bench.jobform;

import boreledger.station.bench.ChosenFile;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.FileAsking;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.window.StationScene;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** The form in a room of the real window. */
final class Forms {
  static final Path SAMPLE = Path.of("../sample-captures/pumphouse-three.job.toml");

  private Forms() {}

  static JobForm form(Path file, Appearance appearance, Consumer<Path> saved, Runnable left)
      throws Exception {
    return form(file, appearance, new ChosenFile(), saved, left);
  }

  static JobForm form(
      Path file, Appearance appearance, FileAsking files, Consumer<Path> saved, Runnable left)
      throws Exception {
    return new JobForm(file, Tables.of(List.of()), appearance, files, saved, left);
  }

  static StationScene scene(JobForm form, Appearance appearance, double[] size, Light light) {
    appearance.light().set(light);
    BenchModel model =
        new BenchModel(
            new BenchServices(null, null, Tones.SILENT, Voice.SILENT),
            Runnable::run,
            Runnable::run,
            () -> 0);
    List<Room> rooms = List.of(new Room("start", "Start", form));
    return new StationScene(model, rooms, appearance, size[0], size[1]);
  }
}
