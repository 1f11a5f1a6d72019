package limberboard.desktop.letters;

import java.io.IOException;
import java.util.List;
import limberboard.boat.Workspace;
import limberboard.cases.NextPages.Hint;
import limberboard.letters.inbox.LetterFolder;
import limberboard.letters.next.NextList;
import limberboard.letters.next.UncoveredLetters;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.MissedSearches;
import limberboard.search.TextWords;

/**
 * What to write next, and whether searches of no use are kept. Immutable.
 *
 * @param hints the list, that first which weighs most
 * @param searches how many searches are kept
 * @param keeping whether more will be
 */
record NextWork(List<Hint> hints, int searches, boolean keeping) {
  private static final int COMPARED = 500;

  /** Copies the list. */
  NextWork {
    hints = List.copyOf(hints);
  }

  /** Reads letters and searches; not for the event thread. */
  static NextWork of(WorkspaceFolders folders, Workspace workspace, List<String> uncovered)
      throws IOException {
    UncoveredLetters letters =
        UncoveredLetters.named(new LetterFolder(folders), uncovered, COMPARED);
    MissedSearches kept = new MissedSearches(folders);
    var searches = kept.all();
    NextList list = new NextList(workspace, TextWords.read(folders, List.of()));
    return new NextWork(
        list.of(letters.uncovered(), letters.others(), searches), searches.size(), kept.areKept());
  }
}
