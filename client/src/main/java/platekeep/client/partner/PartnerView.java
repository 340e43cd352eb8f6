package platekeep.client.partner;

/** The Partner screen as its presenter sees it. */
interface PartnerView {
    void show(PartnerState state);
}
