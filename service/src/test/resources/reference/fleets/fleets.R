# Draws ten fleets of 2 to 6 airframes from the priors and computes their posteriors with JAGS (Debian packages jags and
# r-cran-rjags). Usage: Rscript fleets.R [chains 10] [kept 40000] [fleets 1:10]; writes trials.csv once, and
# posterior-<fleet>.csv with means, quantiles and their Monte Carlo standard errors from the spread over chains.
suppressMessages(library(rjags))
args <- commandArgs(TRUE)
chains <- if (length(args) > 0) as.integer(args[1]) else 10L
kept <- if (length(args) > 1) as.integer(args[2]) else 40000L
which <- if (length(args) > 2) eval(parse(text = args[3])) else 1:10
levels <- c(0.025, 0.05, 0.10, 0.25, 0.50, 0.75, 0.90, 0.95, 0.975)

draw <- function(f) {
  set.seed(20260 + f)
  mu <- rnorm(1, 0, 0.30)
  ta <- abs(rnorm(1, 0, 0.25)); tj <- abs(rnorm(1, 0, 0.15)); ts <- abs(rnorm(1, 0, 0.10))
  sigma <- 0.10 * exp(0.5 * rnorm(1)); delta <- 0.15 * exp(0.5 * rnorm(1))
  rows <- list()
  for (a in seq_len(2 + (f - 1) %% 5)) {
    u <- mu + ta * rnorm(1)
    for (j in seq_len(sample(1:2, 1))) {
      v <- u + tj * rnorm(1)
      for (s in seq_len(sample(1:2, 1, prob = c(0.7, 0.3)))) {
        sx <- sample(c(0.03, 0.08, 0.15), 1)
        c <- v + sqrt(ts^2 + sx^2) * rnorm(1)
        for (t in seq_len(sample(1:5, 1))) {
          x <- round(c + delta / 2 + 0.2 * rnorm(1), 3)
          z <- x - c + sigma * rnorm(1)
          y <- if (runif(1) < 0.02) sample(1:3, 1) else if (z < 0) 1 else if (z < delta) 2 else 3
          rows[[length(rows) + 1]] <- data.frame(fleet = f, airframe = a, joint = j, setup = s, inputSd = sx,
            logRatio = x, outcome = c("none", "partial", "separated")[y])
        }
      }
    }
  }
  do.call(rbind, rows)
}

trials <- do.call(rbind, lapply(1:10, draw))
write.csv(trials, "trials.csv", row.names = FALSE, quote = FALSE)

posterior <- function(f) {
  d <- trials[trials$fleet == f, ]
  setups <- unique(d[c("airframe", "joint", "setup", "inputSd")])
  joints <- unique(setups[c("airframe", "joint")])
  key <- function(t, columns) do.call(paste, t[columns])
  data <- list(A = max(joints$airframe), J = nrow(joints), S = nrow(setups), N = nrow(d),
    airframeOf = joints$airframe,
    jointOf = match(key(setups, c("airframe", "joint")), key(joints, c("airframe", "joint"))),
    inputSd = setups$inputSd, x = d$logRatio,
    setupOf = match(key(d, c("airframe", "joint", "setup")), key(setups, c("airframe", "joint", "setup"))),
    y = match(d$outcome, c("none", "partial", "separated")))
  start <- lapply(seq_len(chains), function(k)
    list(.RNG.name = "base::Mersenne-Twister", .RNG.seed = 1000 * f + k))
  m <- jags.model("model.jags", data, start, n.chains = chains, n.adapt = 3000, quiet = TRUE)
  update(m, 3000, progress.bar = "none")
  draws <- coda.samples(m, c("mu", "tauAirframe", "tauJoint", "tauSetup", "sigma", "delta", "cnew", "c", "x99"),
    kept, progress.bar = "none")
  per <- lapply(draws, function(chain) rbind(colMeans(chain), apply(chain, 2, quantile, levels)))
  each <- simplify2array(per)
  value <- apply(each, 1:2, mean)
  error <- apply(each, 1:2, sd) / sqrt(chains)
  rhat <- gelman.diag(draws[, c("mu", "tauAirframe", "tauJoint", "tauSetup", "sigma", "delta")], multivariate = FALSE)
  out <- data.frame(fleet = f, node = colnames(value), round(t(value), 5), round(t(error), 5))
  names(out) <- c("fleet", "node", "mean", paste0("q", levels), "meanError", paste0("error", levels))
  write.csv(out, sprintf("posterior-%d.csv", f), row.names = FALSE, quote = FALSE)
  cat(sprintf("fleet %d: %d airframes, %d setups, %d trials, largest Gelman-Rubin %.4f, %.0f s\n", f, data$A, data$S,
    data$N, max(rhat$psrf[, 2]), proc.time()[1]))
}
for (f in which) posterior(f)
