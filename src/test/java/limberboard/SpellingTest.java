package limberboard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SpellingTest {
  @Test
  void wordsThatLostLettersAreRefusedBeforeAnythingIsDone() {
    assertThat(new Spelling("/home/ada").wrong("done", "--note", "gr\ufffd\ufffde"))
        .hasValueSatisfying(
            told -> assertThat(told).contains("nothing was done").contains("LC_ALL=C.UTF-8"));
    assertThat(new Spelling("/home/\ufffd").wrong("boats")).isPresent();
  }

  @Test
  void wordsThatArrivedAreTaken() {
    assertThat(new Spelling("/home/ada/Möwe").wrong("done", "--note", "größe ½")).isEmpty();
  }
}
