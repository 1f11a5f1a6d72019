package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UpdateTest {
  @TempDir Path folder;
  private SmallSearchWorkspace workspace;

  @BeforeEach
  void make() {
    workspace = new SmallSearchWorkspace(folder);
    for (int i = 0; i < 20; i++) {
      workspace.topic("topic-" + i, "Topic number " + i, "About plain things.");
    }
  }

  private static UpdateReport report(int added, int changed, int removed) {
    return new UpdateReport(added, changed, removed, Optional.empty());
  }

  @Test
  void onlyPagesThatChangedAreWritten() throws IOException {
    try (SearchIndex index = SearchIndex.open(workspace.folders())) {
      assertThat(index.update(workspace.library())).isEqualTo(report(20, 0, 0));
      workspace.topic("topic-3", "Topic number 3", "About splendid things.");
      workspace.topic("extra", "One more", "Gleaming brightwork.");
      workspace.remove("topics/topic-7");
      assertThat(index.update(workspace.library())).isEqualTo(report(1, 1, 1));
      assertThat(ids(index, "splendid")).containsExactly("topic-3");
      assertThat(ids(index, "brightwork")).containsExactly("extra");
      assertThat(ids(index, "topic number 7")).doesNotContain("topic-7").hasSize(19);
    }
  }

  @Test
  void wordsOfEveryPageAreFoundWhilePagesThatWereReplacedStillLieInTheIndex() throws IOException {
    try (SearchIndex index = workspace.index()) {
      for (int i = 0; i < 9; i++) {
        workspace.topic("topic-" + i, "Topic number " + i, "About plain things, again.");
        index.update(workspace.library());
        SearchResults results = index.find(SearchQuery.of("plain things").whileTyping());
        assertThat(ids(results)).hasSize(20);
        assertThat(results.hits()).allMatch(hit -> hit.score() > 0);
      }
    }
  }

  @Test
  void withoutChangesNothingIsWritten() throws IOException {
    workspace.index().close();
    List<Path> before = workspace.indexFiles();
    try (SearchIndex index = SearchIndex.open(workspace.folders())) {
      assertThat(ids(index, "plain")).as("found before any update").hasSize(20);
      UpdateReport report = index.update(workspace.library());
      assertThat(report.unchanged()).isTrue();
      assertThat(report).isEqualTo(report(0, 0, 0));
      assertThat(ids(index, "plain")).hasSize(20);
    }
    assertThat(workspace.indexFiles()).isEqualTo(before);
  }

  @Test
  void aChangeOfAnyPartOfAHeaderIsAChange() throws IOException {
    List<String> headers =
        List.of(
            "title: Pump",
            "title: Pump\nsummary: One pumps.",
            "title: Pump\nsaid-as: [handle thing]",
            "title: Pump\nzones: [bilge]",
            "title: Pump\nsystem: hull",
            "title: Pump\nfits: {built: 2014}",
            "title: Pump\nfits: {built: 2015}");
    try (SearchIndex index = workspace.index()) {
      workspace.page("topics/pump", "title: Old pump", "Body.");
      index.update(workspace.library());
      for (String header : headers) {
        workspace.page("topics/pump", header, "Body.");
        assertThat(index.update(workspace.library())).as(header).isEqualTo(report(0, 1, 0));
      }
    }
  }

  @Test
  void aMaterialWithANewTitleIsFoundInTheProceduresThatUseIt() throws IOException {
    workspace.page("materials/goo", "title: Goo\ngroup: sealant\nunit: ml", "Sticky.");
    workspace.page(
        "procedures/bed",
        "title: Bed it\nsystem: deck\nwork: mend\nskill: owner\nminutes: 5\n"
            + "materials: [{use: goo, amount: 5 ml}]",
        "Bed it.");
    try (SearchIndex index = workspace.index()) {
      workspace.page("materials/goo", "title: Elastomer\ngroup: sealant\nunit: ml", "Sticky.");
      assertThat(index.update(workspace.library())).isEqualTo(report(0, 2, 0));
      assertThat(ids(index, "elastomer")).containsExactly("goo", "bed");
    }
  }

  @Test
  void otherWordsMakeAnotherIndex() throws IOException {
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "unadorned")).isEmpty();
      workspace.synonyms("plain, unadorned");
      assertThat(index.update(workspace.library())).isEqualTo(report(20, 0, 0));
      assertThat(ids(index, "unadorned")).hasSize(20);
      workspace.spellings("unadorned: unnadornd");
      index.update(workspace.library());
      assertThat(ids(index, "unnadornd")).hasSize(20);
      assertThat(index.update(workspace.library())).isEqualTo(report(0, 0, 0));
    }
  }

  @Test
  void manySmallUpdatesLeaveFewFiles() throws IOException {
    try (SearchIndex index = workspace.index()) {
      for (int i = 0; i < 60; i++) {
        workspace.topic("topic-1", "Topic number 1", "Version v" + i + "v.");
        assertThat(index.update(workspace.library())).isEqualTo(report(0, 1, 0));
        assertThat(ids(index, "v" + i + "v")).containsExactly("topic-1");
      }
    }
    assertThat(workspace.indexFiles().size()).isLessThan(100);
  }
}
