package everyblade.picture.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import everyblade.picture.letter.ArabicForms;
import everyblade.picture.letter.FontsHere;
import everyblade.picture.letter.LineOrder;
import everyblade.picture.letter.ReadableLetters;
import everyblade.words.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.text.Normalizer;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names and notes in the scripts of the world stand readable on a page, in the order in which they are read. */
class ScriptsTest {

    /** Where the fonts that .ci/run installs must be there, their absence is a failure. */
    private static void requireFontWith(int letter) {
        boolean there = new FontsHere().with(letter).isPresent();
        if (Boolean.getBoolean("everyblade.fonts.required")) {
            assertThat(there).as("a font with U+%04X", letter).isTrue();
        }
        assumeTrue(there, "no font here has that letter");
    }

    private static String page(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            Letters letters = Letters.in(document);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                new Pen(stream, letters).write(letters.writable(text), PageWords.Look.PLAIN, 12, 50, 700);
            }
            document.save(bytes);
        }
        try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).as("a subset").matches("[A-Z]{6}\\+.*");
            }
            return new PDFTextStripper().getText(document).strip();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Γιώργος Παπαδόπουλος", "Анна Щербакова, лопатка 14", "Łukasz Żółć", "Ngô Thị Ánh"})
    void lettersThatThePicturesOwnFontHasNeedNoOther(String text) throws IOException {
        assertThat(Normalizer.normalize(page(text), Normalizer.Form.NFC)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"山田太郎", "検査員: 山田 (14 枚)", "王小明", "홍길동"})
    void chineseJapaneseAndKoreanStandAsTheyAreTyped(String text) throws IOException {
        text.codePoints().filter(letter -> letter > 0x2000).forEach(ScriptsTest::requireFontWith);
        assertThat(page(text)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"דוד כהן", "בדיקה 14"})
    void hebrewIsReadFromRightToLeft(String text) throws IOException {
        requireFontWith(0x5D3);
        assertThat(page(text)).isEqualTo(text);
    }

    @Test
    void arabicIsJoinedAndReadFromRightToLeft() throws IOException {
        requireFontWith(0xFEB3);
        assertThat(Normalizer.normalize(page("سلام"), Normalizer.Form.NFKC)).isEqualTo("سلام");
    }

    @Test
    void whatNoFontHasIsWrittenAsItsCodeAndToldBefore() throws IOException {
        assertThat(page("a \uE123 b")).isEqualTo("a [U+E123] b");
        assertThat(new ReadableLetters().lacking("a \uE123 b"))
                .hasValueSatisfying(told -> assertThat(Words.of(Locale.ENGLISH).say(told))
                        .startsWith("no font on this machine has U+E123, so"));
        assertThat(new ReadableLetters().lacking("Übung – 3 ≤ 4 ± 1°, Анна, Γ")).isEmpty();
    }

    @Nested
    class InWhatOrder {

        /** UAX #9: capital letters here stand for Hebrew ones, as in its examples. */
        @ParameterizedTest
        @CsvSource({
            "car is THE CAR in arabic, car is RAC EHT in arabic",
            "abc, abc",
            "ABC, CBA",
            "ABC 123, 123 CBA",
            "he said AB (CD) ok, he said (DC) BA ok",
            "'', ''"
        })
        void aLineStands(String read, String stands) {
            assertThat(latin(LineOrder.standing(hebrew(read)))).isEqualTo(stands);
        }

        private static String hebrew(String text) {
            return text.codePoints()
                    .map(letter -> letter >= 'A' && letter <= 'Z' ? letter - 'A' + 0x5D0 : letter)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }

        private static String latin(String text) {
            return text.codePoints()
                    .map(letter -> letter >= 0x5D0 && letter < 0x5EA ? letter - 0x5D0 + 'A' : letter)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }

    @Nested
    class HowArabicJoins {

        private final ArabicForms forms = new ArabicForms();

        /** The Unicode Standard 15, section 9.2, table 9-3 and the mandatory ligature of lam and alef. */
        @ParameterizedTest
        @CsvSource({
            "0633 0644 0627 0645, FEB3 FEFC FEE1",
            "0628, FE8F",
            "0628 0628 0628, FE91 FE92 FE90",
            "0627 0628, FE8D FE8F",
            "0644 0627, FEFB",
            "0628 064E 0628, FE91 064E FE90",
            "0061 0628 0061, 0061 FE8F 0061",
            "0628 0640 0628, FE91 0640 FE90"
        })
        void aWordIsJoined(String typed, String shown) {
            assertThat(forms.joined(text(typed))).isEqualTo(text(shown));
        }

        private static String text(String codes) {
            StringBuilder text = new StringBuilder();
            for (String code : codes.split(" ")) {
                text.appendCodePoint(Integer.parseInt(code, 16));
            }
            return text.toString();
        }
    }
}
