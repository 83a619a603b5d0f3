package org.tunica.casefile;

/** The veins that CEAP 2020 names by an abbreviation instead of a number (S-0081); the labels are from memory, unverified. */
public enum NamedVein implements Ceap.Code {
    TELANGIECTASIA("TEL", Ceap.Site.SUPERFICIAL),
    RETICULAR("RET", Ceap.Site.SUPERFICIAL),
    GREAT_SAPHENOUS_ABOVE_KNEE("GSVa", Ceap.Site.SUPERFICIAL),
    GREAT_SAPHENOUS_BELOW_KNEE("GSVb", Ceap.Site.SUPERFICIAL),
    SMALL_SAPHENOUS("SSV", Ceap.Site.SUPERFICIAL),
    ANTERIOR_ACCESSORY("AASV", Ceap.Site.SUPERFICIAL),
    NON_SAPHENOUS("NSV", Ceap.Site.SUPERFICIAL),
    THIGH_PERFORATING("TPV", Ceap.Site.PERFORATING),
    CALF_PERFORATING("CPV", Ceap.Site.PERFORATING),
    INFERIOR_CAVAL("IVC", Ceap.Site.DEEP),
    COMMON_ILIAC("CIV", Ceap.Site.DEEP),
    INTERNAL_ILIAC("IIV", Ceap.Site.DEEP),
    EXTERNAL_ILIAC("EIV", Ceap.Site.DEEP),
    PELVIC("PELV", Ceap.Site.DEEP),
    COMMON_FEMORAL("CFV", Ceap.Site.DEEP),
    DEEP_FEMORAL("DFV", Ceap.Site.DEEP),
    FEMORAL("FV", Ceap.Site.DEEP),
    POPLITEAL("POPV", Ceap.Site.DEEP),
    TIBIAL("TIBV", Ceap.Site.DEEP),
    FIBULAR("PRV", Ceap.Site.DEEP),
    ANTERIOR_TIBIAL("ATV", Ceap.Site.DEEP),
    POSTERIOR_TIBIAL("PTV", Ceap.Site.DEEP),
    MUSCULAR("MUSV", Ceap.Site.DEEP),
    GASTROCNEMIUS("GAV", Ceap.Site.DEEP),
    SOLEAL("SOV", Ceap.Site.DEEP);

    private final String code;
    private final Ceap.Site site;

    NamedVein(String code, Ceap.Site site) {
        this.code = code;
        this.site = site;
    }

    @Override
    public String code() {
        return code;
    }

    /** The set of veins it belongs to. */
    public Ceap.Site site() {
        return site;
    }
}
