package everyblade.picture.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.io.StringReader;
import java.util.List;
import java.util.SplittableRandom;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgWriterTest {

    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static Scene scene(String title, Item... items) {
        return new Scene(40, 30, title, "summary", List.of(new Group(title, List.of(items))));
    }

    private static Item words(String words) {
        return Item.of(Text.upright(new Point(1, 2), words, 3, Anchor.START), Ink.LINE);
    }

    @Test
    void any_words_come_back_from_a_parser_as_they_were_or_as_unknown_characters() throws Exception {
        String hostile = "<a href=\"x\">&amp;]]>\u0000\u001b\ud800 °ß\uffff𝕏";
        String back = "<a href=\"x\">&amp;]]>\ufffd\ufffd\ufffd °ß\ufffd𝕏";
        Element root = parsed(SvgWriter.write(scene(hostile, words(hostile)), Theme.LIGHT))
                .getDocumentElement();
        assertThat(root.getElementsByTagName("text").item(0).getTextContent()).isEqualTo(back);
        assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo(back);
        assertThat(root.getElementsByTagName("title").item(1).getTextContent()).isEqualTo(back);
    }

    @Test
    void a_document_says_its_size_and_what_it_shows() throws Exception {
        Element root = parsed(SvgWriter.write(scene("a map"), Theme.DARK)).getDocumentElement();
        assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(root.getAttribute("width")).isEqualTo("40mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 40 30");
        assertThat(root.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo("summary");
    }

    @Test
    void a_sector_is_drawn_with_true_arcs_the_way_that_clock_angles_run() {
        Patch patch = new Patch(new Polar(new Point(20, 20), false), 0, 90, 5, 10);
        assertThat(PathText.of(patch)).isEqualTo("M20 10A10 10 0 0 1 30 20L25 20A5 5 0 0 0 20 15Z");
        Patch mirrored = new Patch(new Polar(new Point(20, 20), true), 0, 90, 5, 10);
        assertThat(PathText.of(mirrored)).isEqualTo("M20 10A10 10 0 0 0 10 20L15 20A5 5 0 0 1 20 15Z");
    }

    @Test
    void a_sector_of_more_than_half_a_turn_takes_the_large_arc_and_a_full_one_is_a_ring() {
        Polar polar = new Polar(new Point(0, 0), false);
        assertThat(PathText.of(new Patch(polar, 0, 270, 1, 2))).startsWith("M0 -2A2 2 0 1 1 -2 0");
        assertThat(PathText.of(new Patch(polar, 10, 370, 1, 2)))
                .isEqualTo("M0 -2A2 2 0 0 1 0 2A2 2 0 0 1 0 -2ZM0 -1A1 1 0 0 0 0 1A1 1 0 0 0 0 -1Z");
    }

    @Test
    void numbers_are_hundredths_without_needless_digits() {
        assertThat(Numbers.of(-0.001)).isEqualTo("0");
        assertThat(Numbers.of(-0.5)).isEqualTo("-0.5");
        assertThat(Numbers.of(12.345)).isEqualTo("12.35");
        assertThat(Numbers.of(1e6)).isEqualTo("1000000");
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < 1000; i++) {
            double number = random.nextDouble(-500, 500);
            String written = Numbers.of(number);
            assertThat(Double.parseDouble(written)).isCloseTo(number, within(0.005001));
            assertThat(written).matches("-?\\d+(\\.\\d?[1-9])?");
        }
    }

    @Test
    void like_styles_share_a_class() {
        String svg = SvgWriter.write(
                scene(
                        "x",
                        words("a"),
                        words("b"),
                        Item.of(Text.upright(new Point(0, 0), "c", 2, Anchor.END), Ink.FAINT)),
                Theme.LIGHT);
        assertThat(svg).contains(".s0{fill:#17202a}", ".s1{fill:#5a6672}").doesNotContain(".s2");
    }
}
