package ripwright.internal.replay.figures;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import ripwright.internal.replay.Figure;
import ripwright.internal.replay.PlacedBoard;
import ripwright.internal.replay.ReplayIndex;
import ripwright.internal.replay.leftovers.Remains;
import ripwright.internal.replay.leftovers.ReplayLeftover;
import ripwright.internal.replay.leftovers.UsableArea;
import ripwright.internal.replay.leftovers.WhatIsLeft;
import ripwright.job.Job;
import ripwright.measure.Area;
import ripwright.measure.BoardFeet;
import ripwright.measure.Length;
import ripwright.measure.Money;
import ripwright.measure.Unit;
import ripwright.stock.Board;

/** What the wood of a plan comes to, in money and in board feet, before anything is rounded. */
public final class Totals {
    private static final BigInteger INCH = BigInteger.valueOf(Unit.INCH.nanometers());
    private static final BigInteger BOARD_FOOT = INCH.pow(3).multiply(BigInteger.valueOf(144)); // cubic nanometers
    private static final long PRINTED = 60; // nanometers that a width or length of a plan read back can be off

    private final Job job;
    private Money stock = Money.ZERO;
    private Figure salvage = Figure.ZERO;
    private BoardFeet consumed = BoardFeet.ZERO;
    private BoardFeet parts = BoardFeet.ZERO;
    private Figure offcuts = Figure.ZERO;

    Totals(ReplayIndex pieces, WhatIsLeft left) {
        this.job = pieces.job();
        Set<String> paid = new HashSet<>();
        for (PlacedBoard board : pieces.boards()) if (paid.add(board.id())) consume(board.board());
        Map<String, Integer> made = new LinkedHashMap<>();
        pieces.blanks().forEach(blank -> made.merge(blank.blank().part(), 1, Integer::sum));
        made.forEach((name, count) -> pieces.part(name)
                .ifPresent(part -> parts = parts.plus(part.boardFeet().times(count))));
        for (Remains remains : left.all()) remains.kept().forEach(this::keep);
    }

    /** A board is paid whole: counted board feet x price, a rack offcut's that x salvage; test wood costs nothing. */
    private void consume(Board board) {
        Money price = BoardFeet.counted(board.area(), board.thickness()).at(job.price(board));
        if (!board.testOnly()) stock = stock.plus(board.fromRack() ? price.times(job.salvage()) : price);
        consumed = consumed.plus(BoardFeet.of(board.area(), board.thickness()));
    }

    /** An offcut is worth counted board feet x price of its board x salvage; test wood fetches nothing. */
    private void keep(ReplayLeftover leftover) {
        UsableArea usable = new UsableArea(leftover);
        BigFraction byMean = usable.byMeanWidth();
        BigFraction exact = usable.trueToShape();
        BigFraction slack = BigFraction.of(BigInteger.valueOf(PRINTED))
                .multiply(leftover.length() + Math.max(leftover.near(), leftover.far()));
        BigFraction worth = boardFeetOfThickness(Math.max(leftover.thickness(), INCH.longValueExact()))
                .multiply(fraction(job.price(leftover.frame().board())))
                .multiply(fraction(job.salvage()));
        boolean fetchesNothing = leftover.frame().board().testOnly();
        if (!fetchesNothing)
            salvage = salvage.plus(new Figure(
                            byMean,
                            (byMean.compareTo(exact) < 0 ? byMean : exact).subtract(slack),
                            (byMean.compareTo(exact) > 0 ? byMean : exact).add(slack))
                    .times(worth));

        BigFraction whole = Area.trapezoid(
                        new Length(leftover.length()), new Length(leftover.near()), new Length(leftover.far()))
                .squareNanometers();
        offcuts = offcuts.plus(new Figure(whole, whole.subtract(slack), whole.add(slack))
                .times(boardFeetOfThickness(leftover.thickness())));
    }

    private static BigFraction boardFeetOfThickness(long thickness) {
        return BigFraction.of(BigInteger.valueOf(thickness), BOARD_FOOT);
    }

    private static BigFraction fraction(BigDecimal number) {
        return Money.of(number).value();
    }

    Money stock() {
        return stock;
    }

    Figure salvage() {
        return salvage;
    }

    BoardFeet consumed() {
        return consumed;
    }

    BoardFeet parts() {
        return parts;
    }

    Figure offcuts() {
        return offcuts;
    }

    /** What of the consumed wood is neither part nor offcut. */
    Figure waste() {
        return Figure.of(consumed.minus(parts).value()).minus(offcuts);
    }
}
