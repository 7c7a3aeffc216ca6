package ripwright.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ripwright.bill.Part;
import ripwright.job.Job;
import ripwright.json.tree.WrongInputException;
import ripwright.measure.Length;
import ripwright.stock.Board;
import ripwright.stock.EndTrim;
import ripwright.stock.Species;

/** Stacks and bills as spreadsheets save them. */
class SpreadsheetsTest {
    private static final String STACK = """
            Board,Species,Thickness,Width,Length,Straight edges
            ash-1,ash,3/4,6,72,2
            """;
    private static final String BILL = """
            Part,Count,Length,Width,Thickness
            door,2,24,2 1/4,3/4
            """;
    private static final String NO_LISTS = JobText.CABINET
            .replaceAll("(?s)\"stack\": \\[.*?],\\s*", "")
            .replaceAll("(?s),\\s*\"parts\": \\[.*?]\n", "\n");

    @TempDir
    private Path folder;

    private final List<String> remarks = new ArrayList<>();

    private Job read(String stack, String bill) throws IOException, WrongInputException {
        return read(stack.getBytes(StandardCharsets.UTF_8), bill.getBytes(StandardCharsets.UTF_8));
    }

    private Job read(byte[] stack, byte[] bill) throws IOException, WrongInputException {
        Path job = Files.writeString(folder.resolve("a.job.json"), NO_LISTS);
        Path boards = Files.write(folder.resolve("stack.csv"), stack);
        Path parts = Files.write(folder.resolve("bill.csv"), bill);
        return JobReader.read(
                job, new Spreadsheets(Optional.of(boards), Optional.of(parts), remark -> remarks.add(plain(remark))));
    }

    private String mistakes(String stack, String bill) throws IOException {
        try {
            return "no mistake: " + read(stack, bill);
        } catch (WrongInputException e) {
            return plain(e.text("nothing was planned"));
        }
    }

    private String plain(String text) {
        return text.replace(folder.toString() + java.io.File.separator, "");
    }

    private static Length in(String inches) {
        return Length.inches(inches);
    }

    @Test
    @Tag("locale")
    void a_job_without_lists_gets_them_from_spreadsheets() throws Exception {
        Job job = read(STACK, BILL);
        assertThat(job.stack())
                .containsExactly(Board.measured("ash-1", "ash", in("3/4"), in("6"), in("72"))
                        .build());
        assertThat(job.parts())
                .containsExactly(Part.of("door", in("24"), in("2 1/4"), in("3/4"))
                        .count(2)
                        .face(Part.Face.SHOW)
                        .build());
        assertThat(remarks).isEmpty();
    }

    @Test
    void lists_of_the_job_file_are_not_looked_at_where_a_spreadsheet_stands_for_them() throws Exception {
        Path job = Files.writeString(
                folder.resolve("a.job.json"),
                JobText.CABINET.replace("\"ash-1\"", "7").replace("72", "\"long\""));
        Path stack = Files.writeString(folder.resolve("stack.csv"), STACK);
        Job read = JobReader.read(job, new Spreadsheets(Optional.of(stack), Optional.empty(), remark -> {}));
        assertThat(read.stack()).extracting(Board::id).containsExactly("ash-1");
        assertThat(read.parts()).extracting(Part::name).containsExactly("door");
    }

    @Test
    void every_field_has_a_column() throws Exception {
        Job job = read("""
                Board,Qty,Species,Thickness,Mills to,Width,Width at far end,Length,Crook,Straight edges,Edge loss,\
                End trim near,End trim far,Price,Ripped,Defect,Defect from,Defect to,Defect left,Defect right,Blocks
                B,2,ash,1 1/16,13/16,7,6 1/2,96,1/4,1,1/8,1,1/2,$7.25,no,knot,10,11 1/2,2,3,all
                ,,,,,,,,,,,,,,,sap,20,30,0,1,show
                C,1,ash,3/4,,2 1/4,,50,,2,,,,,yes,,,,,,
                """, """
                Part,Qty,Length,Width,Thickness,Species,Face,Sneak-up,Edge allowance,Fitted,Together
                rail,3,14 5/8,2 1/4,3/4,ash or hard maple,hidden,1/16,1/32,x,doors
                """);
        Board board = job.stack().get(1);
        assertThat(job.stack()).extracting(Board::id).containsExactly("B#1", "B#2", "C");
        assertThat(board.thickness()).isEqualTo(in("1 1/16"));
        assertThat(board.millsTo()).isEqualTo(in("13/16"));
        assertThat(board.widthAtFarEnd()).isEqualTo(in("6 1/2"));
        assertThat(board.crook()).isEqualTo(in("1/4"));
        assertThat(board.straightEdges()).isEqualTo(1);
        assertThat(board.edgeLoss()).isEqualTo(in("1/8"));
        assertThat(board.endTrim()).isEqualTo(new EndTrim(in("1"), in("1/2")));
        assertThat(board.price()).hasValueSatisfying(price -> assertThat(price).isEqualByComparingTo("7.25"));
        assertThat(board.defects())
                .extracting(defect -> defect.kind() + " " + defect.from() + " " + defect.blocks())
                .containsExactly("knot 10 in ALL", "sap 20 in SHOW");
        assertThat(job.stack().get(2).ripped()).isTrue();
        assertThat(job.parts())
                .containsExactly(Part.of("rail", in("14 5/8"), in("2 1/4"), in("3/4"))
                        .count(3)
                        .species(java.util.Set.of(new Species("ash"), new Species("hard maple")))
                        .face(Part.Face.HIDDEN)
                        .sneakUp(in("1/16"))
                        .edgeAllowance(in("1/32"))
                        .fitted(true)
                        .together("doors")
                        .build());
    }

    @Test
    void semicolons_tabs_marks_and_a_separator_line_are_understood() throws Exception {
        Job plain = read(STACK, BILL);
        assertThat(read("\uFEFF" + STACK.replace(',', ';').replace("\n", "\r\n"), BILL.replace(',', '\t')))
                .isEqualTo(plain);
        assertThat(read("sep=;\r\n" + STACK.replace(',', ';'), "\"sep=|\"\n" + BILL.replace(',', '|')))
                .isEqualTo(plain);
        assertThat(read(STACK.replace("\n", "\r"), BILL.stripTrailing())).isEqualTo(plain);
    }

    @Test
    void decimals_may_stand_behind_a_comma_where_semicolons_are_between() throws Exception {
        Job job = read("""
                Board;Species;Thickness (mm);Width [mm];Length, mm;Straight edges;Price
                A;ash;19,05;152,4;1828,8;2,0;7,25
                """, BILL);
        Board board = job.stack().get(0);
        assertThat(board.thickness()).isEqualTo(in("3/4"));
        assertThat(board.width()).isEqualTo(in("6"));
        assertThat(board.length()).isEqualTo(in("72"));
        assertThat(board.price()).hasValueSatisfying(price -> assertThat(price).isEqualByComparingTo("7.25"));
    }

    @Test
    void quoted_fractions_signs_and_marks_of_inches_are_lengths() throws Exception {
        Job job = read("""
                Board,Species,Thickness,Width,Length,Straight edges
                A,ash,"\u00BE""\","6\u00BD""\",72 in.,2
                B,ash,"3/4",2-3/8,"1828.8 mm",both
                C,ash,"3\u20444\u2033",6\u00A01/8,5 inches,2
                """, BILL);
        assertThat(job.stack()).extracting(Board::thickness).containsOnly(in("3/4"));
        assertThat(job.stack()).extracting(Board::width).containsExactly(in("6 1/2"), in("2 3/8"), in("6 1/8"));
        assertThat(job.stack()).extracting(Board::length).containsExactly(in("72"), in("72"), in("5"));
    }

    @Test
    void heads_are_matched_without_regard_to_case_blanks_signs_and_plural_and_by_words_of_the_trade() throws Exception {
        Job plain = read(STACK, BILL);
        assertThat(read(
                        STACK.replace(
                                "Board,Species,Thickness,Width,Length,Straight edges",
                                "ID,wood, THICK ,Widths,LONG,straight_edge"),
                        BILL.replace(
                                "Part,Count,Length,Width,Thickness",
                                "Part name,Qty.,FINISHED LENGTH,finished-width,T")))
                .isEqualTo(plain);
    }

    @Test
    void titles_above_the_heads_blank_rows_and_blank_columns_do_no_harm() throws Exception {
        Job plain = read(STACK, BILL);
        assertThat(read("Stack of the spring,,,,,\n,,,,,\n" + STACK + ",,,,,\n\n", "Bill for a cabinet\n\n" + BILL))
                .isEqualTo(plain);
        assertThat(read(STACK.replace("\n", ",,\n"), BILL)).isEqualTo(plain);
        assertThat(read(STACK.replaceFirst("edges\n", "edges,note\n,,,,,,from the loft\n"), BILL))
                .isEqualTo(plain);
    }

    @Test
    void columns_that_are_not_used_are_told_unless_they_are_notes() throws Exception {
        read("""
                Board,Species,Thickness,Width,Length,Straight edges,Notes,Dealer,Bay
                ash-1,ash,3/4,6,72,2,nice,Smith,4
                """, BILL.replace("Thickness\n", "Thickness,Door\n"));
        assertThat(remarks)
                .containsExactly(
                        "stack.csv: columns H (Dealer), I (Bay) are not used.",
                        "bill.csv: column F (Door) is not used.");
    }

    @Test
    void a_text_that_a_spreadsheet_would_reckon_with_is_read_without_its_guard() throws Exception {
        assertThat(read(STACK.replace("ash-1", "'=A1"), BILL).stack())
                .extracting(Board::id)
                .containsExactly("=A1");
        assertThat(read(STACK.replace("ash-1", "'tis"), BILL).stack())
                .extracting(Board::id)
                .containsExactly("'tis");
    }

    @Test
    void all_mistakes_of_both_come_at_once_with_row_column_and_line() throws IOException {
        assertThat(mistakes("""
                Board,Species,Thickness,Width,Length,Straight edges

                A,ash,3/4,6 1/z,72,2
                "B",ash,3/4,,"7
                2",3
                A,oak,8-Mar,6,72,2
                """, """
                Part;Count;Length;Width;Thickness;Face;Fitted
                door;two;24;2,25;0,75;side;perhaps
                shelf;1;1.250;2,25;0,75;show;no
                shelf;1;24;2,25;0,75;show;no
                """)).isEqualTo("""
                stack.csv: 7 mistakes, nothing was planned.
                  row 3, column D (Width)            "6 1/z" is not a length. Write it like "2 3/8", "2-3/8", "23.5", "38 mm" or "3/4 in".
                    3:11 | A,ash,3/4,6 1/z,72,2
                         |           ^
                  row 4, column D (Width)            missing. It must be a length, such as 23.5 or "2 3/8".
                    4:13 | "B",ash,3/4,,"7
                         |             ^
                  row 4, column E (Length)           "7?2" is not a length. Write it like "2 3/8", "2-3/8", "23.5", "38 mm" or "3/4 in".
                    4:14 | "B",ash,3/4,,"7
                         |              ^
                  row 4, column F (Straight edges)   3; it must be a whole number from 0 to 2.
                    5:4 | 2",3
                        |    ^
                  row 5, column A (Board)            "A" is the id at row 3, column A (Board) too; ids must differ.
                    6:1 | A,oak,8-Mar,6,72,2
                        | ^
                  row 5, price                       No price for "oak". Add it to prices, or give the board its own.
                    6:1 | A,oak,8-Mar,6,72,2
                        | ^
                  row 5, column C (Thickness)        "8-Mar" is a date, which is what spreadsheets make of 3/8 unless the cells are set to text first; it must be a length, such as 23.5 or "2 3/8".
                    6:7 | A,oak,8-Mar,6,72,2
                        |       ^
                bill.csv: 5 mistakes.
                  row 2, column B (Count)    "two"; it must be a whole number from 1 to 100000.
                    2:6 | door;two;24;2,25;0,75;side;perhaps
                        |      ^
                  row 2, column F (Face)     "side"; it must be "hidden" or "show".
                    2:23 | door;two;24;2,25;0,75;side;perhaps
                         |                       ^
                  row 2, column G (Fitted)   "perhaps" is neither yes nor no; it must be true or false.
                    2:28 | door;two;24;2,25;0,75;side;perhaps
                         |                            ^
                  row 3, column C (Length)   "1.250" may be 1250 or a number with decimals; it must be a length, such as 23.5 or "2 3/8".
                    3:9 | shelf;1;1.250;2,25;0,75;show;no
                        |         ^
                  row 4, column A (Part)     "shelf" is the name at row 3, column A (Part) too; names must differ.
                    4:1 | shelf;1;24;2,25;0,75;show;no
                        | ^
                """);
    }

    @Test
    void what_is_wrong_with_the_heads_is_told_once_and_not_in_every_row() throws IOException {
        assertThat(mistakes("""
                Board,Species,Thicknes,Width (cm),Length,wide
                A,ash,3/4,6,72,2
                B,ash,3/4,6,72,2
                """, "Part,Count,Length\ndoor,2,24\n")).isEqualTo("""
                stack.csv: 4 mistakes, nothing was planned.
                  row 1                          There is no column "straight edges". Write that name above the column that it is, or add one.
                    1:1 | Board,Species,Thicknes,Width (cm),Length,wide
                        | ^
                  row 1, column C (Thicknes)     no such column. Did you mean "thickness"?
                    1:15 | Board,Species,Thicknes,Width (cm),Length,wide
                         |               ^
                  row 1, column D (Width (cm))   lengths in cm are not read; write them in in or mm.
                    1:24 | Board,Species,Thicknes,Width (cm),Length,wide
                         |                        ^
                  row 1, column F (wide)         stands for width, as column D does. Keep one, or call the other something else.
                    1:42 | Board,Species,Thicknes,Width (cm),Length,wide
                         |                                          ^
                bill.csv: 2 mistakes.
                  row 1   There is no column "width". Write that name above the column that it is, or add one.
                    1:1 | Part,Count,Length
                        | ^
                  row 1   There is no column "thickness". Write that name above the column that it is, or add one.
                    1:1 | Part,Count,Length
                        | ^
                """);
    }

    @Test
    void files_that_are_no_tables_are_told() throws IOException {
        assertThat(mistakes("", "{ \"parts\": [] }\n")).isEqualTo("""
                stack.csv: 1 mistake, nothing was planned.
                  the file is empty; it must hold a row of column heads.
                bill.csv: 1 mistake.
                  no column heads found; there must be a row with part, count, length, width, thickness, in any order.
                """);
        assertThat(mistakes(STACK, BILL + "\"door left,1,2,3,4\n"))
                .contains(
                        "row 3   a double quote opens a cell after here and none closes it; close it, or take it out.");
        assertThat(mistakes(STACK.replace("ash-1", "\"ash\"-1"), BILL))
                .contains("row 2   a cell in double quotes goes on behind its closing quote after here;");
    }

    @Test
    void a_table_with_heads_alone_is_an_empty_list() throws IOException {
        assertThat(mistakes(STACK.lines().findFirst().orElseThrow(), BILL)).isEqualTo("""
                stack.csv: 1 mistake, nothing was planned.
                  table   There is no board at all; list at least one.
                    1:1 | Board,Species,Thickness,Width,Length,Straight edges
                        | ^
                """);
    }

    @Test
    void other_encodings_are_told() throws IOException {
        byte[] latin = STACK.replace("ash-1", "fr\u00EAne").getBytes(Charset.forName("windows-1252"));
        byte[] bill = BILL.getBytes(StandardCharsets.UTF_16);
        try {
            read(latin, bill);
            assertThat(false).as("read").isTrue();
        } catch (WrongInputException e) {
            assertThat(plain(e.text("nothing was planned"))).isEqualTo("""
                    stack.csv: 1 mistake, nothing was planned.
                      table   byte EA is not UTF-8 here; save the file as UTF-8.
                        2:3 | fr
                            |   ^
                    bill.csv: 1 mistake.
                      the file is UTF-16; save it as UTF-8.
                    """);
        }
    }

    @Test
    void end_trim_said_in_two_ways_and_a_defect_of_no_board_are_told() throws IOException {
        assertThat(mistakes("""
                Board,Species,Thickness,Width,Length,Straight edges,End trim,End trim near,Defect,Defect from
                ,,,,,,,,knot,4
                A,ash,3/4,6,72,2,1,1,,
                """, BILL))
                .contains(
                        "row 2                        goes on with an entry above, but there is none.",
                        "row 3, column G (End trim)   said twice: here, and in the columns for each part of it.");
    }

    @Test
    void a_file_that_is_not_there_is_told_beside_the_mistakes_of_the_job() throws IOException {
        Path job = Files.writeString(folder.resolve("a.job.json"), NO_LISTS.replace("0.5", "2"));
        Path nowhere = folder.resolve("nowhere.csv");
        try {
            JobReader.read(job, new Spreadsheets(Optional.of(nowhere), Optional.of(nowhere), remark -> {}));
            assertThat(false).as("read").isTrue();
        } catch (WrongInputException e) {
            assertThat(plain(e.text("nothing was planned"))).isEqualTo("""
                    a.job.json: 1 mistake, nothing was planned.
                      $.salvage   2; it must be a share from 0 to 1.
                        9:14 | "salvage": 2
                             |            ^
                    nowhere.csv: 1 mistake.
                      there is no such file.
                    """);
        }
    }
}
