package limberboard.desktop.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpanTest {
  private static final List<String> ALL = List.of("a", "b", "c", "d");

  @Test
  void reachesFromTheOneToTheOtherWhicheverComesFirst() {
    assertThat(Span.of(ALL, "b", "d")).containsExactly("b", "c", "d");
    assertThat(Span.of(ALL, "d", "b")).containsExactly("b", "c", "d");
    assertThat(Span.of(ALL, "c", "c")).containsExactly("c");
  }

  @Test
  void isNothingWhereOneOfThemIsNotThere() {
    assertThat(Span.of(ALL, "b", "e")).isEmpty();
    assertThat(Span.of(ALL, "e", "b")).isEmpty();
  }
}
