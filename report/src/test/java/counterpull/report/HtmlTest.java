package counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What a person typed can never become markup. */
class HtmlTest {
    @Test
    void textAndAttributesAreEscaped() {
        String html = new Html()
                .put("p.x", "title", "a\"b<c>&'", "<i>&\"'\u0000\u0007")
                .done();
        assertThat(html)
                .isEqualTo("<p class=\"x\" title=\"a&quot;b&lt;c&gt;&amp;&#39;\">&lt;i&gt;&amp;&quot;&#39;</p>");
    }

    @Test
    void halfACharacterIsLeftOut() {
        assertThat(Html.escaped("a\uD800b")).isEqualTo("ab");
        assertThat(Html.escaped("\uD83D\uDE00")).isEqualTo("\uD83D\uDE00");
    }

    @Test
    void anOpenElementIsNoPage() {
        Html html = new Html().open("p");
        assertThatThrownBy(html::done)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("p is still open");
    }
}
