-- Neovim as a client of the language server. Ends with 0 only if all holds. Written for 0.7 and newer:
-- `vim.lsp.start` came with 0.8, hence `start_client` and `buf_attach_client`.
local function fail(why)
    io.stderr:write(why .. '\n')
    vim.cmd('cquit 1')
end

-- The line and column, counted from 0, of a word after other words.
local function place(before, word)
    for number, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
        local _, stop = line:find(before, 1, true)
        if stop and line:sub(stop + 1, stop + #word) == word then return { line = number - 1, character = stop } end
    end
    fail('the design has no ' .. before .. word)
end

vim.filetype.add({ extension = { case = 'casewright' } })
vim.cmd('edit ' .. vim.fn.fnameescape(vim.env.CASEWRIGHT_FILE))

local ready = false
local client = vim.lsp.start_client({
    name = 'casewright',
    cmd = vim.split(vim.env.CASEWRIGHT_SERVER, '\n'),
    root_dir = vim.fn.fnamemodify(vim.env.CASEWRIGHT_FILE, ':h'),
    on_init = function() ready = true end,
    on_error = function(code, err) fail('client error ' .. code .. ': ' .. vim.inspect(err)) end,
})
if not client then fail('the client did not start') end
if not vim.wait(10000, function() return ready end, 20) then fail('no answer to initialize') end
vim.lsp.buf_attach_client(0, client)

if not vim.wait(10000, function() return #vim.diagnostic.get(0) > 0 end, 20) then fail('no diagnostic') end
local found = vim.diagnostic.get(0)
local mistake = place('width  ', '40')
if #found ~= 1 or found[1].lnum ~= mistake.line or found[1].col ~= mistake.character then fail('wrong diagnostics: ' .. vim.inspect(found)) end

local answers = vim.lsp.buf_request_sync(0, 'textDocument/hover', {
    textDocument = vim.lsp.util.make_text_document_params(),
    position = place('height ', '66in'),
}, 10000)
local hover = answers and answers[client] and answers[client].result
if not hover or not hover.contents.value:find('1676.4mm', 1, true) then fail('wrong hover: ' .. vim.inspect(answers)) end

vim.lsp.stop_client(client)
vim.wait(3000, function() return vim.lsp.client_is_stopped(client) end, 20)
vim.cmd('qall!')
