# Oracle values for org.twinbar.decision: several treated groups, a crossed factor, a line over amounts, place on the plate.
# Prints the rows of checks.csv whose source is "several.R". Run: Rscript core/src/test/R/several.R
# Made with R 4.2.2, mvtnorm 1.1-3 (Genz and Bretz's integration, abseps 1e-7).
suppressMessages(library(mvtnorm))
set.seed(1)
row <- function(id, quantity, inputs, expected, tolerance, how)
  cat(sprintf('%s,%s,%s,%.12g,%s,"%s"\n', id, quantity, inputs, expected, tolerance, paste0("R 4.2.2 several.R: ", how)))

# Critical |t| of one comparison among several with a common control, each mean with its own variance (Hasler and Hothorn 2008).
critical <- function(v0, v, df, level = 0.95) {
  l <- sqrt(v0 / (v0 + v)); corr <- outer(l, l); diag(corr) <- 1
  f <- function(d) pmvt(rep(-d, length(v)), rep(d, length(v)), df = df, corr = corr,
                        algorithm = GenzBretz(2e6, 1e-8, 0))[1] - level
  uniroot(f, c(1.5, 6), tol = 1e-7)$root
}
plants <- PlantGrowth[-c(3, 7, 12), ]  # as in published.csv
p <- split(plants$weight, plants$group)
m <- sapply(p, mean); v <- sapply(p, var) / sapply(p, length); n <- sapply(p, length)
welch <- function(i, j) (v[i] + v[j])^2 / (v[i]^2 / (n[i] - 1) + v[j]^2 / (n[j] - 1))
for (i in 2:3) {
  # pmvt takes whole degrees of freedom alone; the critical value is interpolated in 1/df, which is straight to 1e-6 here.
  df <- welch(i, 1); lo <- floor(df); hi <- lo + 1
  c1 <- critical(v[1], v[2:3], lo); c2 <- critical(v[1], v[2:3], hi)
  d <- c1 + (c2 - c1) * (1 / df - 1 / lo) / (1 / hi - 1 / lo)
  half <- d * sqrt(v[i] + v[1])
  row(paste0("plants-held-low-", i - 1), "low end held against the control together", "PlantGrowth without rows 3 7 12", m[i] - m[1] - half, "2e-4",
      "mvtnorm pmvt, unequal variances, interpolated in 1/df")
  row(paste0("plants-held-high-", i - 1), "high end", "PlantGrowth without rows 3 7 12", m[i] - m[1] + half, "2e-4", "the same")
}
for (pair in list(c(2, 1), c(3, 1), c(3, 2))) {
  i <- pair[1]; j <- pair[2]
  half <- qtukey(0.95, 3, welch(i, j)) / sqrt(2) * sqrt(v[i] + v[j])
  row(sprintf("plants-pair-low-%d%d", i, j), "low end of a pair among all", "PlantGrowth without rows 3 7 12", m[i] - m[j] - half, "1e-4",
      "Games and Howell by qtukey")
}
t <- ToothGrowth
cell <- function(s, d) t$len[t$supp == s & t$dose == d]
q <- list(cell("VC", 0.5), cell("OJ", 0.5), cell("VC", 2), cell("OJ", 2))
mm <- sapply(q, mean); vv <- sapply(q, var) / sapply(q, length); nn <- sapply(q, length)
value <- mm[1] - mm[2] - mm[3] + mm[4]; df <- sum(vv)^2 / sum(vv^2 / (nn - 1)); half <- qt(.975, df) * sqrt(sum(vv))
row("teeth-contrast", "difference of differences", "ToothGrowth VC - OJ at 0.5 and at 2", value, "1e-9", "arithmetic")
row("teeth-contrast-low", "its low end", "the same", value - half, "1e-8", "arithmetic")
w <- vv / mm^2; df <- sum(w)^2 / sum(w^2 / (nn - 1)); log <- log(mm[1] / mm[2]) - log(mm[3] / mm[4])
row("teeth-ratios", "ratio of ratios", "the same", exp(log), "1e-9", "arithmetic")
row("teeth-ratios-high", "its high end", "the same", exp(log + qt(.975, df) * sqrt(sum(w))), "1e-8", "arithmetic")
line <- lm(len ~ dose, t); ci <- confint(line)
row("teeth-slope", "slope", "ToothGrowth length over dose", coef(line)[2], "1e-9", "lm")
row("teeth-slope-low", "its low end", "the same", ci[2, 1], "1e-8", "confint of lm")
row("teeth-slope-high", "its high end", "the same", ci[2, 2], "1e-8", "confint of lm")
row("teeth-bent-p", "p of lack of fit", "the same", anova(line, lm(len ~ factor(dose), t))[2, 6], "1e-9", "anova of two lm")
at <- predict(line, data.frame(dose = 0.5), interval = "confidence")
row("teeth-band-low", "low end of the line at 0.5", "the same", at[2], "1e-8", "predict of lm")
# VC lacks its highest dose here, so that the supplement moves the slope.
part <- t[!(t$supp == "VC" & t$dose == 2), ]; within <- lm(len ~ supp + dose, part); ci <- confint(within)
row("teeth-within-slope", "slope within blocks", "ToothGrowth without VC 2; supp as block", coef(within)[3], "1e-9", "lm")
row("teeth-within-low", "its low end", "the same", ci[3, 1], "1e-8", "confint of lm")
a <- anova(lm(breaks ~ wool, warpbreaks), lm(breaks ~ wool + tension, warpbreaks))
row("warp-place-F", "F of further columns", "warpbreaks tension beside wool", a[2, 5], "1e-9", "anova of two lm")
row("warp-place-p", "its p", "the same", a[2, 6], "1e-9", "anova of two lm")
