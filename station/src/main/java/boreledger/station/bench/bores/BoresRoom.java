package boreledger.station.bench.bores;

import boreledger.station.bench.look.FigureView;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.Text;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

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
  private final Label fault = Words.label("bores-fault", Styles.PROBLEM);
  private final Parent view;

  private BoresRoom(BoresModel model) {
    this.model = model;
    GridPane page = page();
    Label nothing = Words.label("bores-nothing", Styles.ROOM_HINT);
    nothing.setText(Text.BORES_NOTHING.with());
    nothing.visibleProperty().bind(model.page().isNull());
    page.visibleProperty().bind(model.page().isNotNull());
    StackPane content = new StackPane(nothing, page);
    content.setMinHeight(0);
    VBox.setVgrow(content, Priority.ALWAYS);
    fault.textProperty().bind(model.findings().fault());
    fault.managedProperty().bind(fault.textProperty().isNotEmpty());
    Label defers = Words.label("bores-defers", Styles.DEFERS);
    defers.setText(Text.OVER_DEFERS.with());
    VBox all = new VBox(new AdvicePane(model.page()), fault, content, defers);
    all.getStyleClass().add(Styles.ROOM);
    view = all;
    model.page().subscribe(this::show);
  }

  /** The room of a model. */
  public static Room of(BoresModel model) {
    return new Room(ID, Text.ROOM_BORES.with(), new BoresRoom(model).view, model.findings()::want);
  }

  private GridPane page() {
    GridPane page = new GridPane();
    page.getStyleClass().add(Styles.CARDS);
    for (double percent : WIDTHS_PERCENT) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      page.getColumnConstraints().add(column);
    }
    for (double percent : HEIGHTS_PERCENT) {
      RowConstraints row = new RowConstraints();
      row.setPercentHeight(percent);
      page.getRowConstraints().add(row);
    }
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
      block.show(page.block(), Text.BORES_BLOCK_SPOKEN.with());
      profile.show(page.profile(), Text.BORES_PROFILE_SPOKEN.with(spoken));
      sections.show(page.sections(), Text.BORES_SECTIONS_SPOKEN.with(spoken));
    }
  }
}
