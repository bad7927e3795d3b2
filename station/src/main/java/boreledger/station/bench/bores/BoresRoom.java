package boreledger.station.bench.bores;

import boreledger.station.bench.findings.FindingsView;
import boreledger.station.bench.look.FigureView;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.BoresText;
import boreledger.station.bench.words.WindowText;
import java.util.List;
import javafx.scene.Parent;
import javafx.scene.layout.GridPane;

/** The bores: the block at a glance, one cylinder's profile and sections, and what to do. */
public final class BoresRoom {
  /** By which it is gone to. */
  public static final String ID = "bores";

  private static final double[] WIDTHS_PERCENT = {26, 40, 34};
  private static final double[] HEIGHTS_PERCENT = {46, 54};
  private static final double BLOCK_WORDS = 1.9;
  private static final double SECTION_WORDS = 1.0;

  private final BoresModel model;
  private final FigureView block = new FigureView("block-figure", BLOCK_WORDS);
  private final FigureView profile = new FigureView("profile", 1);
  private final FigureView sections = new FigureView("sections", SECTION_WORDS);
  private final Parent view;

  private BoresRoom(BoresModel model) {
    this.model = model;
    view =
        new FindingsView(
            ID,
            List.of(new AdvicePane(model.page())),
            page(),
            model.findings(),
            model.page().isNotNull(),
            BoresText.NOTHING.with(),
            BenchText.OVER_DEFERS.with());
    model.page().subscribe(this::show);
  }

  /** The room of a model. */
  public static Room of(BoresModel model) {
    return new Room(
        ID, WindowText.ROOM_BORES.with(), new BoresRoom(model).view, model.findings()::want);
  }

  private GridPane page() {
    GridPane page = FindingsView.page(WIDTHS_PERCENT, HEIGHTS_PERCENT);
    page.add(block, 0, 0);
    page.add(new CylinderPane(model), 0, 1);
    page.add(profile, 1, 0, 1, 2);
    page.add(sections, 2, 0);
    page.add(new ChecksPane(model.page()), 2, 1);
    return page;
  }

  private void show(BoresPage page) {
    if (page != null) {
      String spoken = page.shown().title() + ", " + page.shown().words();
      block.show(page.block(), BoresText.BLOCK_SPOKEN.with());
      profile.show(page.profile(), BoresText.PROFILE_SPOKEN.with(spoken));
      sections.show(page.sections(), BoresText.SECTIONS_SPOKEN.with(spoken));
    }
  }
}
