package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NothingWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "2027-02-09 | 9 Feb 2027",
            "2027-02-09 2027-02-11 2027-02-12 2027-02-15 2027-02-16 2027-02-17 | 9, 11–12, 15–17 Feb 2027",
            "2027-02-27 2027-02-28 2027-03-01 2027-03-02 | 27–28 Feb, 1–2 Mar 2027",
            "2027-12-31 2028-01-01 2028-01-03 | 31 Dec 2027, 1, 3 Jan 2028",
            "2027-02-09 2028-02-10 | 9 Feb 2027, 10 Feb 2028"})
    void datesOfOneMonthStandTogether(String dates, String words) {
        List<LocalDate> parsed = Stream.of(dates.split(" ")).map(LocalDate::parse).toList();
        assertEquals(words, NothingWords.dates(parsed));
    }
}
