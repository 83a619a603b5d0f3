package org.tunica.knowledge;

import org.tunica.casefile.FieldReader;

/** Reads how many treated veins stayed closed: a share with its number of veins, or with its interval. */
final class RateReader {
    private RateReader() {}

    static PublishedRate rate(String id, FieldReader reader) {
        PublishedRate rate = new PublishedRate(
                id,
                reader.requiredText("says"),
                reader.texts("techniques"),
                reader.texts("veins"),
                reader.requiredNumber("share"),
                reader.number("treated"),
                reader.number("low"),
                reader.number("high"),
                reader.requiredNumber("months"),
                reader.text("measuredWith"),
                ProvenanceReader.provenance(reader));
        if (reader.readable()) {
            check(rate, reader);
        }
        reader.done();
        return rate;
    }

    private static void check(PublishedRate rate, FieldReader reader) {
        boolean interval = rate.low().isPresent() && rate.high().isPresent();
        if (rate.treated().isPresent() == (rate.low().isPresent() || rate.high().isPresent())
                || rate.treated().isEmpty() && !interval) {
            reader.fault("treated", "give either the number treated, or low and high");
        }
        double low = rate.low().orElse(0);
        double high = rate.high().orElse(1);
        if (!(0 <= low && low <= rate.share() && rate.share() <= high && high <= 1) || low == high) {
            reader.fault("share", "low, share and high must rise from 0 to 1");
        }
        if (rate.treated().orElse(1) <= 0) {
            reader.fault("treated", "must be more than 0");
        }
        if (rate.techniques().size() > 1 && rate.measuredWith().isEmpty()) {
            reader.fault("measuredWith", "a rate that stands for several techniques says with what it was measured");
        }
        if (rate.techniques().isEmpty() || rate.veins().isEmpty()) {
            reader.fault("techniques", "at least one technique and one vein must be named");
        }
    }
}
