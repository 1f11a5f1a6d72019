package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which boat is meant, tried on the demo's boats and models. */
class BoatFinderTest {
  private static Workspace workspace;
  private static BoatFinder finder;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    finder = new BoatFinder(workspace, 2026);
  }

  private static String one(String words) {
    return finder.named(words) instanceof BoatFinder.One one
        ? one.boat().id()
        : finder.named(words).toString();
  }

  private static List<String> offered(String text) {
    return finder.in(text).stream().map(Boat::id).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "redshank | redshank",
        "Redshank | redshank",
        "the Redshank | redshank",
        "Redshank, our Tarnwick 26 | redshank",
        "141 | redshank",
        "hull 141 | redshank",
        "Hull no. 141 | redshank",
        "#141 | redshank",
        "T26 141 | redshank",
        "Tarnwick 26 hull number 58 | whimbrel",
        "a Tarnwick 26 of 2019 | a tarnwick-26 of 2019",
        "A tarnwick 26 from 2019 | a tarnwick-26 of 2019",
        "Tarnwik 26, 2019 | a tarnwick-26 of 2019",
        "tarnwick26 2019 | a tarnwick-26 of 2019",
        "t 26 built 2019 | a tarnwick-26 of 2019",
        "a Tarnwick 26 of 2021 | a tarnwick-26 of 2021",
        "Tarnwick 30, 2017, carbon mast | a tarnwick-30 of 2017 with mast-carbon",
        "a T30 of 2017 with carbon mast and retracting bowsprit"
            + " | a tarnwick-30 of 2017 with mast-carbon and bowsprit-retracting",
        "a Tarnwick 26 of 2013, no toilet | a tarnwick-26 of 2013 with toilet-none",
        "a Tarnwick 26 of 2013 without stove | a tarnwick-26 of 2013 with stove-none",
        "a Tarnwick 26 of 2013, lithium | a tarnwick-26 of 2013 with battery-lithium",
        "a Tarnwick 26 of 2019 in fresh water for charter"
            + " | a tarnwick-26 of 2019 in fresh water for charter",
        "a tarnwick-30 of 2017 with mast-carbon | a tarnwick-30 of 2017 with mast-carbon",
      })
  void wordsNameOneBoat(String words, String id) {
    assertThat(one(words)).isEqualTo(id);
  }

  @Test
  void aModelAndYearOfWhichThereIsABoatMayMeanEither() {
    assertThat(finder.named("Tarnwick 26, 2021"))
        .isEqualTo(
            new BoatFinder.Several(
                List.of(
                    workspace.boat("redshank").orElseThrow(),
                    workspace.boat("a tarnwick-26 of 2021").orElseThrow())));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a Tarnwick 26 | say the year in which she was built",
        "a Tarnwick 26 of 1999 | no Tarnwick 26 was built in 1999",
        "a Tarnwick 26 of 2031 | no Tarnwick 26 was built in 2031",
        "hull 999 | no boat has the hull number 999",
        "a Tarnwick 26 of 2019 with pump | “pump” may mean",
        "a Tarnwick 26 of 2019 with wings | nothing on a Tarnwick 26 is called “wings”",
        "a Tarnwick 26 of 2019, filament lamp | was no longer to be had in 2019",
      })
  void whatIsMissingOrWrongIsSaid(String words, String why) {
    assertThat(finder.named(words))
        .isInstanceOfSatisfying(
            BoatFinder.None.class, none -> assertThat(none.why()).contains(why));
  }

  @Test
  void aMisspeltNameIsNeverTakenForABoatByItself() {
    assertThat(finder.named("redshnak")).isEqualTo(new BoatFinder.None(""));
    assertThat(offered("redshnak")).containsExactly("redshank");
  }

  @Test
  void aLetterOffersTheBoatsItSpeaksOf() {
    assertThat(
            offered(
                "Hello,\n\nwe came back to the boat on Friday and the forward berth of Redshank was"
                    + " wet through. The cushions are soaked and there is a puddle below them.\n"
                    + "Dunlin in the next berth is dry.\n\nRegards"))
        .containsExactlyInAnyOrder("redshank", "dunlin");
    assertThat(
            offered(
                "Good morning, we own a Tarnwick 34 built in 2015 and the cabin sole is wet again"
                    + " after each sail, mostly on the port side. What should we do?"))
        .containsExactly("a tarnwick-34 of 2015");
    assertThat(
            offered(
                "Our boat, hull number 112, has had a wet quarter berth since we bought her, and"
                    + " the water tastes of salt. Could you tell us what to look at first?"))
        .containsExactly("greenshank");
    assertThat(
            offered(
                "the keel of redshnak will not go down any more, and the lever of the pump goes"
                    + " hard at the very end of its way"))
        .containsExactly("redshank");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "wet cushions",
        "the bilge is full",
        "26",
        "0",
        "2019",
        "hull",
        "the oil leaks",
        "a b c d e f g",
        "1.5 mm cord and 200 ml of oil"
      })
  void wordsWithoutABoatOfferNone(String text) {
    assertThat(offered(text)).isEmpty();
  }

  @Test
  void theModelAloneOffersItsBoats() {
    assertThat(offered("tarnwick 26")).containsExactly("redshank", "whimbrel");
    assertThat(offered("Tarnwick 26 2021")).containsExactly("redshank", "a tarnwick-26 of 2021");
    assertThat(offered("red")).containsExactly("redshank");
  }
}
