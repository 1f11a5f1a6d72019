package limberboard.desktop;

import java.time.ZoneId;
import java.util.OptionalInt;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.drills.DrillOutside;
import limberboard.desktop.letters.LetterOutlets;
import limberboard.desktop.letters.LettersPlace;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.read.PagePictures;
import limberboard.desktop.read.PageRenderer;
import limberboard.desktop.read.Papers;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.workspace.WorkspacePlace;
import limberboard.desktop.workspace.findings.FindingsOutside;
import limberboard.desktop.workspace.history.HistoryOutside;
import limberboard.desktop.workspace.history.WhoRecords;
import limberboard.desktop.workspace.notes.NoteTies;
import limberboard.desktop.workspace.notes.NotesOutside;
import limberboard.desktop.write.symptom.SymptomTools;
import limberboard.print.picture.Pictures;

/**
 * What the places of the window need of what lies outside them: the window's models, threads,
 * files, clipboard and dialogs.
 *
 * @param desk the window's models
 * @param outside what the window was given
 */
record PlaceNeeds(WindowAssembly desk, WindowServices outside) {
  private static final long SEEDS = 10_000;

  /** For the editor of symptoms. */
  SymptomTools symptoms() {
    return new SymptomTools(
        desk.session(),
        desk.pages(),
        desk.background(outside.threads().trees()),
        desk.background(outside.threads().written()),
        outside.writing().tables());
  }

  /** For the letters. */
  LettersPlace.Outside letters() {
    return new LettersPlace.Outside(
        outside.folders(),
        outside.arriving().notes(),
        desk.letters(),
        desk.writing(),
        outside.guard(),
        outside.clock(),
        new LetterOutlets(
            outside.arriving().askFiles(),
            outside.arriving().pasted(),
            outside.outlets().askFile(),
            outside.clipboard(),
            outside.copied()));
  }

  /** For the drills. */
  DrillOutside drills() {
    return new DrillOutside(
        outside.folders(),
        desk.background(outside.threads().drills()),
        desk.writing(),
        outside.guard(),
        outside.courses(),
        outside.outlets().askFile(),
        () -> ThreadLocalRandom.current().nextLong(SEEDS));
  }

  private HistoryOutside history() {
    return new HistoryOutside(
        outside.recorded(),
        desk.session(),
        desk.background(outside.threads().versions()),
        outside.guard(),
        desk.notices(),
        new WhoRecords(outside.memory()),
        ZoneId.systemDefault(),
        outside.threads().event(),
        () -> desk.loader().load());
  }

  /**
   * For every place.
   *
   * @param ways the ways to other places
   */
  PlaceTools tools(Navigator ways) {
    Pictures pictures = Pictures.in(outside.folders());
    PageRenderer renderer = new PageRenderer(pictures, outside.guard());
    return new PlaceTools(
        desk.session(),
        desk.settings(),
        desk.pages(),
        desk.notices(),
        ways,
        dividers(outside.memory()),
        new PagePictures(pictures),
        renderer,
        new Papers(renderer, desk.pages(), desk.notices(), outside.outlets()));
  }

  private static Divider.Memory dividers(Memory memory) {
    return new Divider.Memory() {
      @Override
      public OptionalInt place(String key) {
        int place = memory.number("divider-" + key, 50, 950, -1);
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
      }

      @Override
      public void remember(String key, int thousandths) {
        memory.remember("divider-" + key, Integer.toString(thousandths));
      }
    };
  }

  /**
   * For the workspace and its notes.
   *
   * @param onScreen what is on the screen when a note is written
   */
  WorkspacePlace.Outside workspace(Supplier<NoteTies> onScreen) {
    return new WorkspacePlace.Outside(
        history(),
        new FindingsOutside(
            outside.folders(),
            desk.session(),
            desk.background(outside.threads().findings()),
            desk.writing(),
            outside.guard(),
            desk.notices(),
            outside.memory(),
            () -> desk.loader().load()),
        new NotesOutside(
            outside.noted(),
            desk.writing(),
            outside.guard(),
            desk.notices(),
            outside.clock(),
            onScreen,
            outside.outlets().opening()));
  }
}
