package limberboard.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.library.value.Own;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people write for a month and share now and then: nothing that either wrote is lost. */
class MonthTest {
  private static final int DAYS = 30;

  @TempDir Path folder;
  private final List<String> written = new ArrayList<>();
  private int asked;

  @Test
  void nothingIsLostInAMonth() throws IOException {
    SharedPair pair = new SharedPair(folder);
    RandomEdits edits = new RandomEdits(11);
    List<String> pages = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      pages.add("articles/topics/page-" + i + ".md");
      pair.yard.write(pages.get(i), edits.page());
    }
    pair.yard.push();
    pair.owner.pull();
    for (int day = 1; day <= DAYS; day++) {
      work(pair.yard, edits, pages, day);
      work(pair.owner, edits, pages, day);
      if (edits.below(3) == 0) {
        share(pair.yard);
      }
      if (edits.below(4) == 0) {
        share(pair.owner);
      }
    }
    share(pair.yard);
    share(pair.owner);
    share(pair.yard);
    String all = all(pair.yard);
    assertThat(all(pair.owner)).isEqualTo(all);
    assertThat(written).hasSizeGreaterThan(100).allSatisfy(word -> assertThat(all).contains(word));
    assertThat(asked).as("conflicts that were settled").isPositive();
    assertThat(all).doesNotContain("<<<<", ">>>>");
    pair.yard.isSound();
    pair.owner.isSound();
    SharedPair.Copy late = pair.copy("late", SharedPair.BOB, Own.DEALER);
    assertThat(all(late)).isEqualTo(all);
  }

  /** A day's work: paragraphs, a line in the log, now and then a case or a new page. */
  private void work(SharedPair.Copy copy, RandomEdits edits, List<String> pages, int day)
      throws IOException {
    for (int i = 0; i < 1 + edits.below(3); i++) {
      String page = pages.get(edits.below(pages.size()));
      List<String> parts = new ArrayList<>(List.of(copy.read(page).split("(?<=\n\n)")));
      String word = said(edits);
      parts.add(1 + edits.below(parts.size()), word + ".\n\n");
      copy.write(page, String.join("", parts));
    }
    String log = "boats/knot/log.csv";
    String date = "2026-05-" + (day < 10 ? "0" : "") + day;
    copy.write(log, copy.read(log) + date + ",wash," + said(edits) + "\n");
    if (edits.below(4) == 0) {
      copy.write("boats/cases/" + date + "-wet.yaml", "symptom: wet\nnote: " + said(edits) + "\n");
    }
    if (edits.below(6) == 0) {
      String word = said(edits);
      copy.write("articles/topics/" + word + ".md", "---\ntitle: " + word + "\n---\n");
    }
  }

  private String said(RandomEdits edits) {
    String word = edits.words();
    written.add(word);
    return word;
  }

  /** Pulls, settling each conflict with both texts, and pushes. */
  private void share(SharedPair.Copy copy) throws IOException {
    PullOutcome outcome = copy.pull();
    if (outcome instanceof PullOutcome.Open open) {
      asked += open.conflicts().size();
      List<String> choices = new ArrayList<>();
      open.conflicts().forEach(each -> choices.add(each.file() + ":" + each.part() + "=both"));
      assertThat(copy.pull(choices.toArray(String[]::new))).isInstanceOf(PullOutcome.Pulled.class);
    }
    copy.push();
  }

  private static String all(SharedPair.Copy copy) throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.walk(copy.folders().root())) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String path = copy.folders().relative(file);
        if (!path.startsWith(".git/")) {
          all.append(path).append('\n').append(copy.read(path));
        }
      }
    }
    return all.toString();
  }
}
