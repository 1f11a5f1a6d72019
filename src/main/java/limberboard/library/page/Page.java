package limberboard.library.page;

import java.util.Optional;

/**
 * One page of the library.
 *
 * @param <D> the details of its kind
 * @param id file name without ending, unique in the library
 * @param path of the file, relative to the workspace, with {@code /}
 * @param head what every page has
 * @param details what its kind adds
 * @param body its Markdown, without the header
 * @param bodyLine the line of the file on which the body begins, from 1
 */
public record Page<D extends Details>(
    String id, String path, Head head, D details, String body, int bodyLine) {

  /** The page's title. */
  public String title() {
    return head.title();
  }

  /** The same page, if it is of this kind. */
  public <E extends Details> Optional<Page<E>> as(Class<E> kind) {
    return kind.isInstance(details)
        ? Optional.of(new Page<>(id, path, head, kind.cast(details), body, bodyLine))
        : Optional.empty();
  }

  /** The page's kind. */
  public Kind kind() {
    return details.kind();
  }
}
