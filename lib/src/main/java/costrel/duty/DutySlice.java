package costrel.duty;

import java.math.BigDecimal;

/**
 * The part of a run that bears one rate.
 *
 * @param rate the rate
 * @param payable what is paid of it for one unit, after its share and a stated discount
 * @param volume how much beer, in hL, or barrels where duty is charged by the barrel
 * @param perVolume what one hL or barrel bears
 * @param unrounded volume times that
 */
public record DutySlice(
        DutyRate rate, BigDecimal payable, BigDecimal volume, BigDecimal perVolume, BigDecimal unrounded) {}
