package limberboard.rooms;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pictures of the packages are those of the code. */
class RoomsPictureTest {
  private static JavaClasses classes;

  @BeforeAll
  static void read() {
    classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("limberboard");
  }

  @ParameterizedTest
  @CsvSource({
    "limberboard, rooms",
    "limberboard.library, rooms-library",
    "limberboard.print, rooms-print",
    "limberboard.desktop, rooms-desktop",
    "limberboard.desktop.upkeep, rooms-desktop-upkeep"
  })
  void isDrawnAsTheCodeIs(String within, String file) throws IOException {
    Path picture = Path.of("docs/pictures", file + ".svg");
    Rooms rooms = Rooms.of(classes, within);
    assertThat(rooms.needs()).hasSizeGreaterThan(3);
    String drawn = RoomsPicture.of(rooms);
    if (Boolean.getBoolean("rooms.write")) {
      Files.writeString(picture, drawn);
    }
    assertThat(Files.readString(picture))
        .as("%s; make it anew with mvn test -Dtest=RoomsPictureTest -Drooms.write=true", picture)
        .isEqualTo(drawn);
  }

  @Test
  void anArrowStandsForWhatTheClassesUseAndNotForWhatFollows() {
    Map<String, Set<String>> needs = Rooms.of(classes, "limberboard.trace").needs();
    assertThat(needs).containsOnlyKeys("", "review", "learning");
    assertThat(needs.get("review")).containsExactly("");
    assertThat(needs.get("")).isEmpty();
    assertThat(Rooms.of(classes, "limberboard").needs().get("cli"))
        .contains("letters")
        .doesNotContain("library", "print");
  }
}
